import type { WorkedCostSheet } from '@scantling/contracts';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import { type ClassRow, piecesWords } from './class-rows.ts';
import './cost-sheet.css';

const QUANTITY_WIDTH = 150;

interface ClassTableProps {
  readonly label: string;
  readonly worked: WorkedCostSheet;
  readonly rows: readonly ClassRow[];
}

/** Lines of cost or price, one column for each number of pieces. */
export function ClassTable({ label, worked, rows }: ClassTableProps) {
  const columns = useMemo(() => {
    const amountOf = (id: string | null): string => (id === null ? '' : (worked.figures[id]?.value ?? ''));
    return [
      {
        id: 'label',
        header: 'All pieces together',
        sortBy: false,
        text: (row) => row.label,
        render: (row) => (
          <>
            <span className={row.isTotal ? 'class-total' : undefined}>{row.label}</span>
            {row.note !== '' && <span className="class-note"> {row.note}</span>}
          </>
        ),
      },
      ...worked.columns.map(
        (column): DataColumn<ClassRow> => ({
          id: `pieces-${column.quantity}`,
          header: piecesWords(column.quantity),
          isNumeric: true,
          sortBy: false,
          // The same in the table of costs and in the one of prices, so that both read as one.
          width: QUANTITY_WIDTH,
          text: (row) => amountOf(row.figure(column)),
          render: (row) => {
            const id = row.figure(column);
            if (id === null) return <span className="no-figure">none</span>;
            return (
              <FigureValue
                id={id}
                isPercent={row.isShare}
                look={row.isTotal ? 'total' : 'plain'}
                {...(row.places === undefined ? {} : { places: row.places })}
              />
            );
          },
        }),
      ),
    ] satisfies DataColumn<ClassRow>[];
  }, [worked]);
  // A label must not stand a whole screen away from its figures.
  const width = `calc(28rem + ${worked.columns.length * QUANTITY_WIDTH}px)`;
  return (
    <div style={{ maxWidth: width, minWidth: 0 }}>
      <DataTable label={label} columns={columns} rows={rows} rowId={(row) => row.id} />
    </div>
  );
}
