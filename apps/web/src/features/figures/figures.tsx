import type { FigureTable } from '@scantling/figures';
import { useMemo, useState } from 'react';
import { SplitWithRail } from '../../components/split-with-rail.tsx';
import { FiguresContext } from './figures-context.ts';
import { useFigureInAddress } from './use-figure-in-address.ts';
import { WorkingRail } from './working-rail.tsx';

export interface FiguresProps {
  /** The table the API answered with, derivations included. */
  readonly table: FigureTable;
  readonly children: React.ReactNode;
  /** The address of the record a source names ("price-line:42"), where there is a screen for it. */
  readonly recordAddress?: (record: string) => string | undefined;
}

/** Hands a table of figures to every `FigureValue` inside, and draws the rail with the open one's working. */
export function Figures({ table, children, recordAddress }: FiguresProps) {
  const { id, show } = useFigureInAddress();
  const [trail, setTrail] = useState<readonly string[]>([]);
  const value = useMemo(
    () => ({
      table,
      openId: id,
      open: (next: string) => {
        setTrail([]);
        show(next === id ? null : next);
      },
    }),
    [table, id, show],
  );
  const close = (): void => {
    setTrail([]);
    show(null);
  };
  return (
    <FiguresContext value={value}>
      <SplitWithRail
        railLabel="Working"
        subject={id}
        onClose={close}
        rail={
          id === null ? null : (
            <WorkingRail
              table={table}
              id={id}
              trail={trail.filter((from) => table[from] !== undefined)}
              recordAddress={recordAddress}
              onFollow={(next) => {
                setTrail([...trail.filter((from) => from !== next), id]);
                show(next);
              }}
              onBack={(at) => {
                const back = trail[at];
                setTrail(trail.slice(0, at));
                show(back ?? null);
              }}
              onClose={close}
            />
          )
        }
      >
        {children}
      </SplitWithRail>
    </FiguresContext>
  );
}
