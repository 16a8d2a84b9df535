import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import type { OverheadRecovery } from '../api/get-overhead-recovery.ts';
import { baseWords, isShareOfCost } from './overhead-words.ts';
import './overhead.css';

type Pool = OverheadRecovery['pools'][number];
type Actual = keyof NonNullable<Pool['actual']>;

interface PoolTableProps {
  readonly pools: readonly Pool[];
  readonly figures: OverheadRecovery['figures'];
}

/** What each pool recovers at the base planned and at the base there was. */
export function PoolTable({ pools, figures }: PoolTableProps) {
  const columns = useMemo(() => {
    const rate = (id: string, pool: Pool) => (
      <FigureValue id={id} isPercent={isShareOfCost(pool.base)} places={2} />
    );
    const actual = (id: Actual, header: string): DataColumn<Pool> => ({
      id: `actual-${id}`,
      header,
      isNumeric: true,
      sortBy: false,
      text: (pool) => (pool.actual === null ? '' : (figures[pool.actual[id]]?.value ?? '')),
      render: (pool) => {
        if (pool.actual === null) return <span className="overhead-none">not known yet</span>;
        return id === 'rate' ? rate(pool.actual.rate, pool) : <FigureValue id={pool.actual[id]} />;
      },
    });
    return [
      { id: 'name', header: 'Pool', sortBy: false, text: ({ name }) => name },
      { id: 'base', header: 'Recovered over', sortBy: false, text: ({ base }) => baseWords(base) },
      {
        id: 'net',
        header: 'Amounts, net of rates',
        isNumeric: true,
        sortBy: false,
        text: ({ net }) => figures[net]?.value ?? '',
        render: ({ net }) => <FigureValue id={net} />,
      },
      {
        id: 'rate',
        header: 'Planned rate',
        isNumeric: true,
        sortBy: false,
        text: (pool) => figures[pool.rate]?.value ?? '',
        render: (pool) => rate(pool.rate, pool),
      },
      actual('rate', 'Actual rate'),
      actual('recovered', 'Recovered'),
      actual('underRecovered', 'Under-recovered'),
      actual('spending', 'From spending'),
      actual('volume', 'From volume'),
    ] satisfies DataColumn<Pool>[];
  }, [figures]);
  return <DataTable label="Overhead pools" columns={columns} rows={pools} rowId={({ kind }) => kind} />;
}
