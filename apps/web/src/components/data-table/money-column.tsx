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
}

/** A column of amounts, each in the currency of its row; a dash where there is none, which sorts last. */
export function moneyColumn<Row>({
  id,
  header,
  locale,
  amount,
  currency,
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
      return value === null ? '–' : formatMoney(value, currency(row), { locale });
    },
  };
}
