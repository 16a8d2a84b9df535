import type { FigureTable } from '@scantling/figures';
import { useMemo, useRef, useState } from 'react';
import { SplitWithRail } from '../../components/split-with-rail.tsx';
import { FiguresContext } from './figures-context.ts';
import { useFigureInAddress } from './use-figure-in-address.ts';
import { useFigureInSight } from './use-figure-in-sight.ts';
import { useRecordAddress } from './use-record-address.ts';
import { WorkingRail } from './working-rail.tsx';

export interface FiguresProps {
  /** The table the API answered with, derivations included. */
  readonly table: FigureTable;
  readonly children: React.ReactNode;
  /** Addresses that only this page knows (the design whose bill it costs); asked before the others. */
  readonly ownAddress?: (record: string) => string | undefined;
  /** More figures are on their way, so that one the table lacks may still come. */
  readonly isPending?: boolean;
}

/** Hands a table of figures to every `FigureValue` inside, and draws the rail with the open one's working. */
export function Figures({ table, children, ownAddress, isPending = false }: FiguresProps) {
  const { id, show } = useFigureInAddress();
  const addressOf = useRecordAddress(id !== null);
  const [trail, setTrail] = useState<readonly string[]>([]);
  const content = useRef<HTMLDivElement>(null);
  const buttonInSight = useFigureInSight(content, id);
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
        returnTo={buttonInSight}
        rail={
          id === null ? null : (
            <WorkingRail
              table={table}
              id={id}
              isPending={isPending || Object.keys(table).length === 0}
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
        <div ref={content}>{children}</div>
      </SplitWithRail>
    </FiguresContext>
  );
}
