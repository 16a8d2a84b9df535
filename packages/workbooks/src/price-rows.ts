import type { WorkedCostSheet } from '@scantling/contracts';
import {
  type CellRole,
  moneyFormat,
  PERCENT_FORMAT,
  text,
  unitLabel,
  type WorkbookRow,
  type WorkingBook,
} from '@scantling/figures';
import type { Currency } from '@scantling/money';

type WorkedPrice = WorkedCostSheet['columns'][number]['price'];
type Row = readonly [label: string, name: keyof WorkedPrice, look?: 'total' | 'share' | 'rate'];

const ROWS: readonly Row[] = [
  ['List price', 'listPrice'],
  ['Price, after discount and before tax', 'netPrice', 'total'],
  ['Profit', 'profit'],
  ['Margin on the price', 'margin', 'share'],
  ['Markup on cost', 'markup', 'share'],
  ['What an hour of the owner earns', 'hourlyEarnings', 'rate'],
  ['Floor price, at which the owner earns 0 an hour', 'floorPrice'],
];

/** A label, a unit, and one figure a column; empty where a column has none. */
export function figureRow(
  book: WorkingBook,
  label: string,
  ids: readonly (string | null)[],
  { labelRole = 'label', role = 'value', format }: { labelRole?: CellRole; role?: CellRole; format?: string },
): WorkbookRow {
  const first = ids.find((id) => id !== null);
  const node = first === undefined || first === null ? null : book.node(first);
  const unit = node === null ? '' : unitLabel(node.unit, node.currency, node.label);
  const unitText = text(format === PERCENT_FORMAT ? '%' : unit, role === 'total' ? 'total-label' : 'unit');
  return [
    text(label, labelRole),
    // The lines of a class are in its unit.
    labelRole === 'line' ? text('', 'unit') : unitText,
    ...ids.map((id) =>
      id === null ? null : book.cell(id, { role, ...(format === undefined ? {} : { format }) }),
    ),
  ];
}

/** The price and what it leaves, one column for each. */
export function priceRows(
  book: WorkingBook,
  prices: readonly WorkedPrice[],
  currency: Currency,
): WorkbookRow[] {
  const looks = {
    total: { labelRole: 'total-label', role: 'total' },
    share: { format: PERCENT_FORMAT },
    rate: { format: moneyFormat(currency) },
  } as const;
  return ROWS.map(([label, name, look]) =>
    figureRow(
      book,
      label,
      prices.map((price) => price[name]),
      look === undefined ? {} : looks[look],
    ),
  );
}
