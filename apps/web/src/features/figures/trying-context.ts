import type { FigureNode } from '@scantling/figures';
import type { LengthSystem } from '@scantling/units';
import { createContext, useContext } from 'react';
import type { FieldMessage } from '../../components/field.tsx';

/** Other values tried at the leaves of a table; nothing is stored. */
export interface TryingValue {
  /** A leaf as it stands, before anything was tried; undefined for what is no leaf of the table. */
  readonly leafOf: (id: string) => FigureNode | undefined;
  /** What is tried at a leaf, by its id. */
  readonly triedAt: (id: string) => string | undefined;
  /** What a figure was before, where it moved. */
  readonly wasOf: (id: string) => string | undefined;
  /** Why the last value given for a leaf cannot stand. */
  readonly problemAt: (id: string) => FieldMessage | undefined;
  /** Tries a value; null puts back what stands. */
  readonly attempt: (leaf: FigureNode, value: string | null) => void;
  /** How lengths are read and written. */
  readonly system: LengthSystem;
}

export const TryingContext = createContext<TryingValue | null>(null);

/** Null where nothing can be tried. */
export function useTrying(): TryingValue | null {
  return useContext(TryingContext);
}
