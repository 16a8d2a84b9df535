import { RATE_BASES } from '@scantling/costing';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import type { ToolRates } from '../api/get-tool-rates.ts';
import { type RateRow, rateRows } from './rate-rows.ts';
import { BASIS_WORDS } from './tool-words.ts';
import './tools.css';

interface RateTableProps extends ToolRates {
  /** Its name. */
  readonly tool: string;
}

/** What an hour of a tool costs: one column for each basis. */
export function RateTable({ tool, rates, figures }: RateTableProps) {
  const rows = useMemo(() => rateRows(rates, tool), [rates, tool]);
  const columns = useMemo(
    () => [
      {
        id: 'label',
        header: 'Cost of an hour',
        sortBy: false,
        text: (row) => row.label,
        render: (row) => <span className={row.isTotal ? 'rate-total' : undefined}>{row.label}</span>,
      } satisfies DataColumn<RateRow>,
      ...RATE_BASES.map(
        (basis): DataColumn<RateRow> => ({
          id: basis,
          header: BASIS_WORDS[basis].label,
          isNumeric: true,
          sortBy: false,
          text: (row) => figures[row.figures[basis] ?? '']?.value ?? '',
          render: (row) => {
            const id = row.figures[basis];
            return id === undefined ? (
              <span className="rate-none">not counted</span>
            ) : (
              <FigureValue
                id={id}
                look={row.isTotal ? 'total' : 'plain'}
                isUnitHidden={row.isHourly}
                {...(row.id === 'life' ? {} : { places: 2 })}
              />
            );
          },
        }),
      ),
    ],
    [figures],
  );
  return <DataTable label="Machine-hour rate" columns={columns} rows={rows} rowId={({ id }) => id} />;
}
