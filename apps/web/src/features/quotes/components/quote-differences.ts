import type { Difference } from '../../../components/record-editor/field-spec.ts';
import { cell, DELIVERY, isFromSheet, type LineForm } from './line-cells.ts';
import type { QuoteForm } from './quote-form.ts';

const FIELDS = [
  ['Title', 'title'],
  ['Before the lines', 'intro'],
  ['Prices', 'priceMode'],
  ['Discount', 'discount'],
  ['Promised for', 'promisedOn'],
  ['Days it holds', 'validDays'],
  ['Terms', 'terms'],
] as const;

function lineWords(line: LineForm | undefined): string {
  if (line === undefined) return 'no such line';
  const number = cell(line, 'from') === DELIVERY ? '1' : cell(line, 'quantity');
  const price = isFromSheet(line) ? '' : ` at ${cell(line, 'price')}`;
  const taken = cell(line, 'taken');
  const choice = taken === 'included' ? '' : `, ${taken} ${cell(line, 'group')}`.trimEnd();
  return `${number} × ${cell(line, 'description')}${price}${choice}`;
}

const scheduleWords = ({ schedule }: QuoteForm): string =>
  schedule.map(({ label, share }) => `${label} ${share} %`).join(', ') || 'in one sum';

/** Where two states of a draft differ, line by line. */
export function quoteDifferences(mine: QuoteForm, theirs: QuoteForm): readonly Difference[] {
  const named = FIELDS.filter(([, field]) => mine[field] !== theirs[field]).map(([label, field]) => ({
    label,
    mine: mine[field] || 'nothing',
    theirs: theirs[field] || 'nothing',
  }));
  const keys = new Set([...mine.lines, ...theirs.lines].map(({ key }) => key));
  const lines = [...keys].flatMap((key): Difference[] => {
    const [own, other] = [mine, theirs].map(({ lines: all }) => all.find((line) => line.key === key));
    if (JSON.stringify(own) === JSON.stringify(other)) return [];
    const name = [own, other].map((line) => line && cell(line, 'description')).find(Boolean) ?? 'unnamed';
    return [{ label: `Line "${name}"`, mine: lineWords(own), theirs: lineWords(other) }];
  });
  const order = ({ lines: all }: QuoteForm): string =>
    all.map((line) => cell(line, 'description')).join(', ');
  const others: readonly Difference[] = [
    { label: 'Paid in', mine: scheduleWords(mine), theirs: scheduleWords(theirs) },
    ...(lines.length === 0
      ? [{ label: 'Order of the lines', mine: order(mine), theirs: order(theirs) }]
      : []),
  ];
  return [...named, ...lines, ...others.filter((one) => one.mine !== one.theirs)];
}
