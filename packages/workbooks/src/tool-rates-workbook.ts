import type { WorkedMachineHourRate } from '@scantling/contracts';
import {
  type FigureTable,
  moneyFormat,
  text,
  type Workbook,
  type WorkbookSheet,
  WorkingBook,
} from '@scantling/figures';
import { columnHeads, headRows } from './sheet-head.ts';
import { TableSheet } from './table-sheet.ts';
import { factsOf, type WorkbookAbout } from './workbook-about.ts';

type Basis = WorkedMachineHourRate['basis'];

interface ToolRates {
  readonly code: string;
  readonly name: string;
  readonly acquisition: string;
  /** One for each basis. */
  readonly rates: readonly WorkedMachineHourRate[];
}

export interface AllToolRates {
  readonly tools: readonly ToolRates[];
  /** The year of the books that the book basis is for. */
  readonly year: number;
  /** With derivations. */
  readonly figures: FigureTable;
}

const BASIS_WORDS: Readonly<Record<Basis, string>> = {
  replacement: 'replacement',
  book: 'book',
  marginal: 'marginal',
};

/** What an hour of every tool costs, on the three bases, with the lines it is made of. */
export function toolRatesWorkbook(given: AllToolRates, about: WorkbookAbout): Workbook {
  const { tools, year, figures } = given;
  const title = 'Machine-hour rates';
  const book = new WorkingBook(figures);
  for (const { name, rates } of tools)
    for (const rate of rates)
      book.section(`${name}, ${BASIS_WORDS[rate.basis]}`, [
        ...rate.lines.flatMap(({ perYear, perHour }) => [perYear, perHour]),
        rate.perHour,
      ]);
  const facts = factsOf(
    about,
    `Replacement is what pricing recovers, book what was paid (year ${year}), marginal what one more hour costs.`,
  );
  return {
    title,
    date: about.date,
    paper: about.paper,
    sheets: [
      frontSheet(book, tools, { title, facts }, about),
      lineSheet(book, tools, about),
      ...book.sheets(),
    ],
  };
}

function frontSheet(
  book: WorkingBook,
  tools: readonly ToolRates[],
  words: { title: string; facts: readonly string[] },
  { currency }: WorkbookAbout,
): WorkbookSheet {
  const head = [
    ...headRows(words),
    columnHeads(
      'Tool',
      'Code',
      'Came',
      '>Owning an hour, replacement',
      '>Running an hour, replacement',
      '>An hour, replacement',
      '>An hour, book',
      '>An hour, marginal',
    ),
  ];
  const sheet = new TableSheet(head, currency);
  const format = moneyFormat(currency);
  for (const { name, code, acquisition, rates } of tools) {
    const cell = (basis: Basis, part: 'owningPerHour' | 'runningPerHour' | 'perHour') => {
      const rate = rates.find((one) => one.basis === basis);
      return rate === undefined ? null : book.cell(rate[part], { format });
    };
    sheet.add(
      text(name, 'label'),
      text(code, 'unit'),
      text(acquisition, 'unit'),
      cell('replacement', 'owningPerHour'),
      cell('replacement', 'runningPerHour'),
      cell('replacement', 'perHour'),
      cell('book', 'perHour'),
      cell('marginal', 'perHour'),
    );
  }
  return sheet.sheet({
    name: 'Machine hours',
    widths: [36, 20, 12, 14, 14, 14, 14, 14],
    headRows: head.length,
  });
}

/** A table for each tool and basis: what it pays for, by the year and by the hour. */
function lineSheet(
  book: WorkingBook,
  tools: readonly ToolRates[],
  { currency }: WorkbookAbout,
): WorkbookSheet {
  const head = [
    [text('What the rates are made of', 'title')],
    columnHeads('What for', '', '>A year', '>An hour'),
  ];
  const sheet = new TableSheet(head, currency);
  const format = moneyFormat(currency);
  for (const { name, rates } of tools)
    for (const rate of rates) {
      sheet.begin(`${name}: ${BASIS_WORDS[rate.basis]}`);
      for (const { label, group, perYear, perHour } of rate.lines)
        sheet.add(
          text(label, 'label'),
          text(group, 'unit'),
          book.cell(perYear, { format }),
          book.cell(perHour, { format }),
        );
      sheet.add(
        text('An hour of it', 'total-label'),
        text('', 'total-label'),
        text('', 'total'),
        book.cell(rate.perHour, { format, role: 'total' }),
      );
    }
  return sheet.sheet({ name: 'Lines', widths: [60, 12, 16, 16], headRows: head.length });
}
