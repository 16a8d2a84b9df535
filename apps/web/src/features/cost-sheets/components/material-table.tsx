import type { WorkedCostSheet } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import './cost-sheet.css';

type Line = WorkedCostSheet['columns'][number]['materials'][number];
type FigureField = 'needed' | 'used' | 'bought' | 'boughtCost' | 'charged' | 'offcutValue' | 'loss';

const CLASS_WORDS: Readonly<Record<Line['class'], string>> = {
  'direct-materials': 'direct materials',
  'bought-in': 'bought-in',
  subcontract: 'bought service',
  consumables: 'consumables',
};

function textColumn(id: string, header: string, text: (line: Line) => string): DataColumn<Line> {
  return { id, header, text };
}

interface MaterialTableProps {
  readonly worked: WorkedCostSheet;
  readonly materials: readonly Line[];
}

/** What each material is needed, used, bought and charged for, and where its price comes from. */
export function MaterialTable({ worked, materials }: MaterialTableProps) {
  const columns = useMemo(() => {
    const amountOf = (line: Line, field: FigureField) => worked.figures[line[field]]?.value ?? '';
    const figure = (id: FigureField, header: string): DataColumn<Line> => ({
      id,
      header,
      isNumeric: true,
      text: (line) => amountOf(line, id),
      sortBy: (line) => decimal(amountOf(line, id) === '' ? '0' : amountOf(line, id)),
      render: (line) => <FigureValue id={line[id]} />,
    });
    return [
      textColumn('name', 'Material', (line) => line.name),
      figure('needed', 'Needed'),
      figure('used', 'Used'),
      figure('bought', 'Bought'),
      figure('boughtCost', 'Paid'),
      figure('charged', 'Charged'),
      figure('offcutValue', 'Offcut to stock'),
      figure('loss', 'Loss'),
      textColumn('class', 'Class', (line) => CLASS_WORDS[line.class]),
      textColumn('supplier', 'Supplier', (line) => line.supplier),
      textColumn('listDate', 'List of', (line) => line.listDate),
      textColumn('leadDays', 'Lead time', (line) =>
        line.leadDays === null ? 'not said' : `${line.leadDays} days`,
      ),
      textColumn('rule', 'Why this price', (line) => line.rule),
      textColumn('code', 'Code', (line) => line.code),
    ];
  }, [worked]);
  return (
    <DataTable
      label="Materials"
      columns={columns}
      rows={materials}
      rowId={(line) => `${line.class} ${line.code}`}
      empty="The bill of materials of this design names no material yet."
    />
  );
}
