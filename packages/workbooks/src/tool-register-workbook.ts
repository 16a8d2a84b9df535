import type { ToolRegisterAnswer, WorkedSchedule } from '@scantling/contracts';
import { moneyFormat, text, type Workbook, type WorkbookSheet, WorkingBook } from '@scantling/figures';
import { columnHeads, headRows } from './sheet-head.ts';
import { TableSheet } from './table-sheet.ts';
import { factsOf, type WorkbookAbout } from './workbook-about.ts';

const AMOUNTS = ['opening', 'addition', 'depreciation', 'disposed', 'closing'] as const;

export interface ScheduledRegister {
  /** With derivations, the schedules' figures among its own. */
  readonly register: ToolRegisterAnswer;
  /** How the books write each tool of the register off, year by year. */
  readonly schedules: readonly { readonly name: string; readonly schedule: WorkedSchedule }[];
}

/** The register of tools of a year for the accountant, and the schedules it comes from. */
export function toolRegisterWorkbook(
  { register, schedules }: ScheduledRegister,
  about: WorkbookAbout,
): Workbook {
  const title = `Register of tools ${register.year}`;
  const book = new WorkingBook(register.figures);
  for (const { name, schedule } of schedules)
    book.section(
      name,
      schedule.years.flatMap(({ opening, expense, closing }) => [opening, expense, closing]),
    );
  book.section(
    `Year ${register.year}`,
    register.rows.flatMap((row) => AMOUNTS.map((name) => row[name])),
  );
  return {
    title,
    date: about.date,
    paper: about.paper,
    sheets: [
      frontSheet(book, register, headRows({ title, facts: factsOf(about, register.note) }), about),
      scheduleSheet(book, schedules, about),
      ...book.sheets(),
    ],
  };
}

function frontSheet(
  book: WorkingBook,
  { rows, totals, leftOut, year }: ToolRegisterAnswer,
  words: ReturnType<typeof headRows>,
  { currency }: WorkbookAbout,
): WorkbookSheet {
  const head = [
    ...words,
    columnHeads(
      'Tool',
      'Code',
      'Came',
      'Method',
      '>Opening',
      '>Addition',
      '>Depreciation',
      '>Disposed',
      '>Closing',
      '>Gain on disposal',
    ),
  ];
  const sheet = new TableSheet(head, currency);
  for (const row of rows)
    sheet.add(
      text(row.name, 'label'),
      text(row.code, 'unit'),
      text(row.acquisition, 'unit'),
      text(row.method, 'unit'),
      ...AMOUNTS.map((name) => book.cell(row[name])),
      row.gain === null ? null : book.cell(row.gain),
    );
  sheet.add(
    text('All tools', 'total-label'),
    ...['', '', ''].map((blank) => text(blank, 'total-label')),
    ...[...AMOUNTS, 'gain' as const].map((name) => book.cell(totals[name], { role: 'total' })),
  );
  sheet.add();
  for (const tool of leftOut) sheet.add(text(`Left out, hired: ${tool}`, 'fact'));
  return sheet.sheet({
    name: `Register ${year}`,
    widths: [36, 20, 12, 24, 14, 14, 14, 14, 14, 14],
    headRows: head.length,
  });
}

function scheduleSheet(
  book: WorkingBook,
  schedules: ScheduledRegister['schedules'],
  { currency }: WorkbookAbout,
): WorkbookSheet {
  const head = [
    [text('How each tool is written off', 'title')],
    columnHeads('Year', '>Opening', '>Depreciation', '>Closing'),
  ];
  const sheet = new TableSheet(head, currency);
  const format = moneyFormat(currency);
  for (const { name, schedule } of schedules) {
    sheet.begin(`${name}: ${schedule.methodLabel}`);
    for (const { year, opening, expense, closing } of schedule.years)
      sheet.add(
        text(String(year), 'label'),
        book.cell(opening, { format }),
        book.cell(expense, { format }),
        book.cell(closing, { format }),
      );
    sheet.add(
      text('Written off in all', 'total-label'),
      text('', 'total'),
      book.cell(schedule.total, { format, role: 'total' }),
      text('', 'total'),
    );
    if (schedule.caution !== null) sheet.add(text(schedule.caution, 'fact'));
  }
  return sheet.sheet({ name: 'Schedules', widths: [40, 16, 16, 16], headRows: head.length });
}
