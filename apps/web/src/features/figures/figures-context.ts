import type { FigureTable } from '@scantling/figures';
import { createContext, useContext } from 'react';

export interface FiguresValue {
  readonly table: FigureTable;
  /** The figure whose working is open, or null. */
  readonly openId: string | null;
  readonly open: (id: string) => void;
}

export const FiguresContext = createContext<FiguresValue | null>(null);

/** @throws Error outside of `Figures`: a figure without its table cannot show its working */
export function useFigures(): FiguresValue {
  const value = useContext(FiguresContext);
  if (!value) throw new Error('FigureValue stands outside of Figures');
  return value;
}
