import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import type { ToolRegister } from '../api/get-tool-register.ts';
import { ACQUISITION_WORDS } from './tool-words.ts';

type Row = ToolRegister['rows'][number];
type Amount = 'opening' | 'addition' | 'depreciation' | 'disposed' | 'closing' | 'gain';

/** What the books hold each owned tool for over one year, with the sums of all. */
export function RegisterTable({ register }: { readonly register: ToolRegister }) {
  const columns = useMemo(() => {
    const figure = (id: Amount, header: string): DataColumn<Row> => ({
      id,
      header,
      isNumeric: true,
      sortBy: false,
      text: (row) => register.figures[row[id] ?? '']?.value ?? '',
      render: (row) => {
        const shown = row[id];
        return shown === null ? null : <FigureValue id={shown} />;
      },
      total: <FigureValue id={register.totals[id]} look="total" />,
    });
    return [
      { id: 'name', header: 'Tool', text: ({ name }) => name, total: 'All tools' },
      { id: 'code', header: 'Code', text: ({ code }) => code },
      { id: 'acquisition', header: 'Came', text: ({ acquisition }) => ACQUISITION_WORDS[acquisition] },
      { id: 'method', header: 'Method', text: ({ method }) => method },
      figure('opening', 'Opening value'),
      figure('addition', 'Additions'),
      figure('depreciation', 'Depreciation'),
      figure('disposed', 'Disposals'),
      figure('closing', 'Closing value'),
      figure('gain', 'Gain on disposal'),
    ] satisfies DataColumn<Row>[];
  }, [register]);
  return (
    <DataTable
      label={`Register of ${register.year}`}
      columns={columns}
      rows={register.rows}
      rowId={({ code }) => code}
      empty="No owned tool was in the books in this year."
    />
  );
}
