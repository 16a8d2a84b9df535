import type { WorkedCostSheet } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { Link } from '@tanstack/react-router';
import { useMemo } from 'react';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import './cost-sheet.css';

type Column = WorkedCostSheet['columns'][number];
type Line = MaterialRow;
type FigureField = 'needed' | 'used' | 'bought' | 'boughtCost' | 'charged' | 'offcutValue' | 'loss';

const CLASS_WORDS: Readonly<Record<Line['class'], string>> = {
  'direct-materials': 'direct materials',
  'bought-in': 'bought-in',
  subcontract: 'bought service',
  consumables: 'consumables',
};

/** A material, or the freight of a supplier's order, which is paid and charged like one. */
interface MaterialRow {
  readonly id: string;
  readonly name: string;
  readonly class: Column['materials'][number]['class'];
  readonly supplier: string;
  readonly listDate: string;
  readonly lead: string;
  readonly rule: string;
  readonly code: string;
  /** Ids; null where it has none. */
  readonly figures: Readonly<Record<FigureField, string | null>>;
  readonly priceList: { readonly list: string; readonly line: string } | null;
}

function rowsOf({ materials, freightIn }: Column): MaterialRow[] {
  return [
    ...materials.map((line) => ({
      ...line,
      id: `${line.class} ${line.code}`,
      lead: line.leadDays === null ? 'not said' : `${line.leadDays} days`,
      figures: line,
      priceList: line.priceListId === null ? null : { list: line.priceListId, line: line.priceLineId },
    })),
    ...freightIn.map((line) => ({
      id: `freight ${line.supplier}`,
      name: `Freight of ${line.name}, one order`,
      class: line.class,
      supplier: line.name,
      listDate: '',
      lead: '',
      rule: line.rule,
      code: '',
      figures: { ...line, needed: null, used: null, bought: null },
      priceList: null,
    })),
  ];
}

function textColumn(id: string, header: string, text: (line: Line) => string): DataColumn<Line> {
  return { id, header, text };
}

interface MaterialTableProps {
  readonly worked: WorkedCostSheet;
  readonly column: Column;
}

/** What each material is needed, used, bought and charged for. */
export function MaterialTable({ worked, column }: MaterialTableProps) {
  const rows = useMemo(() => rowsOf(column), [column]);
  const columns = useMemo(() => {
    const amountOf = (line: Line, field: FigureField) => {
      const id = line.figures[field];
      return id === null ? '' : (worked.figures[id]?.value ?? '');
    };
    const figure = (id: FigureField, header: string): DataColumn<Line> => ({
      id,
      header,
      isNumeric: true,
      text: (line) => amountOf(line, id),
      sortBy: (line) => (amountOf(line, id) === '' ? null : decimal(amountOf(line, id))),
      render: (line) => {
        const shown = line.figures[id];
        return shown === null ? null : <FigureValue id={shown} />;
      },
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
    ];
  }, [worked]);
  return (
    <DataTable
      label="Materials"
      columns={columns}
      rows={rows}
      rowId={(line) => line.id}
      empty="Nothing is bought: the bill names no material, or none of its materials has a price."
    />
  );
}

const PRICE_COLUMNS: readonly DataColumn<Line>[] = [
  textColumn('name', 'Material', (line) => line.name),
  textColumn('code', 'Code', (line) => line.code),
  textColumn('supplier', 'Supplier', (line) => line.supplier),
  {
    ...textColumn('listDate', 'List of', (line) => line.listDate),
    render: ({ listDate, priceList }) =>
      priceList === null ? (
        listDate
      ) : (
        <Link
          to="/price-lists/$priceListId"
          params={{ priceListId: priceList.list }}
          search={{ line: priceList.line }}
        >
          {listDate}
        </Link>
      ),
  },
  textColumn('leadDays', 'Lead time', (line) => line.lead),
  textColumn('rule', 'Why this price', (line) => line.rule),
];

/** Whose list each price is from, and by which rule it was taken. */
export function MaterialPriceTable({ column }: { readonly column: Column }) {
  const rows = useMemo(() => rowsOf(column), [column]);
  return (
    <DataTable
      label="Where the prices come from"
      columns={PRICE_COLUMNS}
      rows={rows}
      rowId={(line) => line.id}
    />
  );
}
