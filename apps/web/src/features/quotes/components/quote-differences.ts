import type { Difference } from '../../../components/record-editor/field-spec.ts';
import type { LineForm, QuoteForm } from './quote-form.ts';

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
  const number = line.kind === 'cost-sheet' ? line.pieces : line.quantity;
  const price = line.kind === 'cost-sheet' ? '' : ` at ${line.price}`;
  const choice = line.choice === 'included' ? '' : `, ${line.choice} ${line.group}`.trimEnd();
  return `${number} × ${line.description}${price}${choice}`;
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
  const ids = new Set([...mine.lines, ...theirs.lines].map(({ id }) => id));
  const lines = [...ids].flatMap((id): Difference[] => {
    const [own, other] = [mine, theirs].map(({ lines: all }) => all.find((line) => line.id === id));
    if (JSON.stringify(own) === JSON.stringify(other)) return [];
    const name = own?.description || other?.description || 'unnamed';
    return [{ label: `Line "${name}"`, mine: lineWords(own), theirs: lineWords(other) }];
  });
  const order = ({ lines: all }: QuoteForm): string => all.map(({ description }) => description).join(', ');
  const others: readonly Difference[] = [
    { label: 'Paid in', mine: scheduleWords(mine), theirs: scheduleWords(theirs) },
    ...(lines.length === 0
      ? [{ label: 'Order of the lines', mine: order(mine), theirs: order(theirs) }]
      : []),
  ];
  return [...named, ...lines, ...others.filter((one) => one.mine !== one.theirs)];
}
