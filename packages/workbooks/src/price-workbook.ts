import type { AnswerOf, price } from '@scantling/contracts';
import { text, type Workbook, WorkingBook } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { priceRows } from './price-rows.ts';
import { columnHeads, headRows } from './sheet-head.ts';

/** A price from cost alone, with what it leaves. @param worked with derivations */
export function priceWorkbook(
  worked: AnswerOf<typeof price>,
  { currency, date }: { currency: Currency; date: string },
): Workbook {
  const title = 'Price from cost';
  const book = new WorkingBook(worked.figures);
  book.section(
    'Price',
    [
      worked.listPrice,
      worked.netPrice,
      worked.profit,
      worked.margin,
      worked.markup,
      worked.hourlyEarnings,
    ].flatMap((id) => id ?? []),
  );
  const head = [
    ...headRows({ title, facts: [`Amounts in ${currency}.`] }),
    [...columnHeads('What is charged, and what it leaves', ''), text('Amount', 'number-head')],
  ];
  const front = {
    name: 'Price',
    widths: [52, 14, 18],
    headRows: head.length,
    headColumns: 1,
    rows: [...head, ...priceRows(book, [worked], currency)],
  };
  return { title, date, paper: 'a4', sheets: [front, ...book.sheets()] };
}
