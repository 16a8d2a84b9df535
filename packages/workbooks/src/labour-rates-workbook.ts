import type { AnswerOf, getLabourRates } from '@scantling/contracts';
import { moneyFormat, text, type Workbook, WorkingBook } from '@scantling/figures';
import { columnHeads, headRows } from './sheet-head.ts';
import { TableSheet } from './table-sheet.ts';
import { factsOf, type WorkbookAbout } from './workbook-about.ts';

/** What an hour of each labour grade costs. @param worked with derivations */
export function labourRatesWorkbook(
  { rates, figures }: AnswerOf<typeof getLabourRates>,
  about: WorkbookAbout,
): Workbook {
  const title = 'Labour rates';
  const book = new WorkingBook(figures);
  for (const rate of rates) book.section(rate.name, [rate.pay, rate.paidHour, rate.perHour]);
  const head = [
    ...headRows({ title, facts: factsOf(about) }),
    columnHeads(
      'Grade',
      'Code',
      '',
      '>Pay an hour',
      '>Pay and burden of a paid hour',
      '>What an hour of work costs',
    ),
  ];
  const sheet = new TableSheet(head, about.currency);
  const format = moneyFormat(about.currency);
  for (const { name, code, isOwner, pay, paidHour, perHour } of rates)
    sheet.add(
      text(name, 'label'),
      text(code, 'unit'),
      text(isOwner ? 'owner' : '', 'unit'),
      book.cell(pay, { format }),
      book.cell(paidHour, { format }),
      book.cell(perHour, { format }),
    );
  const front = sheet.sheet({ name: title, widths: [34, 16, 10, 16, 18, 18], headRows: head.length });
  return { title, date: about.date, paper: about.paper, sheets: [front, ...book.sheets()] };
}
