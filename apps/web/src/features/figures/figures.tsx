import type { FigureTable } from '@scantling/figures';
import { useMemo, useState } from 'react';
import { SplitWithRail } from '../../components/split-with-rail.tsx';
import { FiguresContext } from './figures-context.ts';
import { useFigureInAddress } from './use-figure-in-address.ts';
import { useRecordAddress } from './use-record-address.ts';
import { WorkingRail } from './working-rail.tsx';

export interface FiguresProps {
  /** The table the API answered with, derivations included. */
  readonly table: FigureTable;
  readonly children: React.ReactNode;
  /** Addresses that only this page knows (the design whose bill it costs); asked before the others. */
  readonly ownAddress?: (record: string) => string | undefined;
}

/** Hands a table of figures to every `FigureValue` inside, and draws the rail with the open one's working. */
export function Figures({ table, children, ownAddress }: FiguresProps) {
  const { id, show } = useFigureInAddress();
  const addressOf = useRecordAddress(id !== null);
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
              recordAddress={(record) => {
                const own = ownAddress?.(record);
                return own === undefined ? addressOf(record) : { to: own };
              }}
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
