import type { AnswerOf, getOverheadRecovery } from '@scantling/contracts';
import { text, type Workbook, type WorkbookSheet, WorkingBook } from '@scantling/figures';
import { columnHeads, headRows, inLines } from './sheet-head.ts';
import { TableSheet } from './table-sheet.ts';
import { factsOf, type WorkbookAbout } from './workbook-about.ts';

type Recovery = AnswerOf<typeof getOverheadRecovery>;

const HOME_WORDS: Readonly<Record<keyof Recovery['proof']['homes'], string>> = {
  'machine-rate': 'Machine-hour rates',
  'labour-rate': 'Labour rates',
  'workshop-pool': 'Workshop pool',
  'administration-pool': 'Administration pool',
};

const SHARES = ['amount', 'byMachineRates', 'byLabourRates', 'inPool', 'nowhere'] as const;

/** The rates of both pools, and where each yearly amount comes back. @param recovery with derivations */
export function overheadWorkbook(recovery: Recovery, about: WorkbookAbout): Workbook {
  const title = 'Overhead recovery';
  const book = new WorkingBook(recovery.figures);
  const { pools, proof } = recovery;
  for (const { name, net, rate, actual } of pools)
    book.section(name, [net, rate, ...(actual === null ? [] : Object.values(actual))]);
  for (const line of proof.lines)
    book.section(
      line.name,
      SHARES.map((share) => line[share]),
    );
  book.section('Proof', [proof.total, ...Object.values(proof.homes), proof.rest]);
  return {
    title,
    date: about.date,
    paper: about.paper,
    sheets: [
      poolSheet(book, recovery, headRows({ title, facts: factsOf(about) }), about),
      proofSheet(book, recovery, about),
      ...book.sheets(),
    ],
  };
}

function poolSheet(
  book: WorkingBook,
  { pools }: Recovery,
  words: ReturnType<typeof headRows>,
  { currency }: WorkbookAbout,
): WorkbookSheet {
  const head = [
    ...words,
    columnHeads(
      'Pool',
      'Over',
      '>Planned for the year',
      '>Planned rate',
      '>Actual rate',
      '>Recovered',
      '>Under-recovered',
      '>By spending',
      '>By volume',
    ),
  ];
  const sheet = new TableSheet(head, currency);
  for (const { name, base, net, rate, actual } of pools)
    sheet.add(
      text(name, 'label'),
      text(base.replaceAll('-', ' '), 'unit'),
      book.cell(net),
      book.cell(rate),
      ...(actual === null
        ? []
        : [actual.rate, actual.recovered, actual.underRecovered, actual.spending, actual.volume].map((id) =>
            book.cell(id),
          )),
    );
  return sheet.sheet({
    name: 'Pools',
    widths: [32, 20, 16, 14, 14, 16, 16, 16, 16],
    headRows: head.length,
  });
}

function proofSheet(book: WorkingBook, { proof }: Recovery, { currency }: WorkbookAbout): WorkbookSheet {
  const head = [
    [text('Where each yearly amount comes back', 'title')],
    columnHeads(
      'Yearly amount',
      'Home',
      '>Amount',
      '>By machine rates',
      '>By labour rates',
      '>In a pool',
      '>Nowhere',
    ),
  ];
  const sheet = new TableSheet(head, currency);
  for (const line of proof.lines)
    sheet.add(
      text(line.name, 'label'),
      text(HOME_WORDS[line.home], 'unit'),
      ...SHARES.map((share) => book.cell(line[share])),
    );
  sheet.begin('Proof');
  sheet.add(text('All amounts', 'label'), null, book.cell(proof.total));
  for (const [home, words] of Object.entries(HOME_WORDS) as [keyof typeof HOME_WORDS, string][])
    sheet.add(text(words, 'line'), null, book.cell(proof.homes[home]));
  sheet.add(
    text('Without a home', 'total-label'),
    text('', 'total'),
    book.cell(proof.rest, { role: 'total' }),
  );
  for (const { message } of proof.findings)
    for (const line of inLines(message)) sheet.add(text(line, 'warning'));
  return sheet.sheet({ name: 'Proof', widths: [46, 22, 16, 16, 16, 16, 16], headRows: head.length });
}
