import { useState } from 'react';
import { Button } from '../button.tsx';
import './chart.css';

export interface ChartTable {
  readonly heads: readonly string[];
  /** The first cell names the row. */
  readonly rows: readonly (readonly string[])[];
}

export interface ChartFrameProps {
  /** What the chart shows, in one sentence. */
  readonly label: string;
  /** The same numbers; drawn by the screen itself where they open their working. */
  readonly table: ChartTable | React.ReactElement;
  readonly children: React.ReactNode;
}

/** A chart with its numbers: drawn, or as a table. */
export function ChartFrame({ label, table, children }: ChartFrameProps) {
  const [isTable, setIsTable] = useState(false);
  return (
    <figure className="chart">
      <figcaption>
        <span>{label}</span>
        <Button look="quiet" onPress={() => setIsTable(!isTable)}>
          {isTable ? 'Show as chart' : 'Show as table'}
        </Button>
      </figcaption>
      {isTable ? drawnTable(label, table) : children}
    </figure>
  );
}

function drawnTable(label: string, table: ChartFrameProps['table']): React.ReactElement {
  if ('heads' in table) return <PlainTable label={label} table={table} />;
  return table;
}

function PlainTable({ label, table }: { readonly label: string; readonly table: ChartTable }) {
  return (
    <div className="chart-table-frame">
      <table className="chart-table">
        <caption className="visually-hidden">{label}</caption>
        <thead>
          <tr>
            {table.heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((cells) => (
            <tr key={cells[0]}>
              {cells.map((cell, at) =>
                at === 0 ? (
                  <th key={table.heads[at]} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={table.heads[at]}>{cell}</td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
