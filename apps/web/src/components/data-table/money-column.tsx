import { decimal } from '@scantling/decimals';
import type { Currency } from '@scantling/money';
import { formatMoney } from '../../lib/format.ts';
import type { DataColumn } from './data-column.ts';

interface MoneyColumn<Row> {
  readonly id: string;
  readonly header: string;
  readonly locale: string;
  /** Decimal text; null where the row has none. */
  readonly amount: (row: Row) => string | null;
  readonly currency: (row: Row) => Currency;
  /** Puts the amount into a link to where it is worked out. */
  readonly link?: (row: Row, text: string) => React.ReactNode;
}

/** A column of amounts, each in the currency of its row; a dash where there is none, which sorts last. */
export function moneyColumn<Row>({
  id,
  header,
  locale,
  amount,
  currency,
  link,
}: MoneyColumn<Row>): DataColumn<Row> {
  return {
    id,
    header,
    isNumeric: true,
    text: (row) => amount(row) ?? '',
    sortBy: (row) => {
      const value = amount(row);
      return value === null ? null : decimal(value);
    },
    render: (row) => {
      const value = amount(row);
      if (value === null) return '–';
      const text = formatMoney(value, currency(row), { locale });
      return link === undefined ? text : link(row, text);
    },
  };
}
