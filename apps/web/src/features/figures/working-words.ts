import {
  type FigureNode,
  type FigureTable,
  OPERATIONS,
  runningDerivation,
  type SourceKind,
  UnknownFigureError,
} from '@scantling/figures';
import { type FormatOptions, formatAmount } from '../../lib/format.ts';

/** More inputs than this are not read in one line; all of them stand in the list below it. */
const READ_IN_ONE_LINE = 6;

/** @throws UnknownFigureError when the answer points at a figure it does not hold */
export function nodeOf(table: FigureTable, id: string): FigureNode {
  const node = table[id];
  if (!node) throw new UnknownFigureError(id);
  return node;
}

export function inputsOf(table: FigureTable, node: FigureNode): FigureNode[] {
  return (node.how?.inputs ?? []).map((id) => nodeOf(table, id));
}

/** The inputs each under a key of its own: one figure may stand twice in a derivation (a square). */
export function keyedInputs(table: FigureTable, node: FigureNode): { key: string; input: FigureNode }[] {
  return inputsOf(table, node).map((input, at) => ({ key: `${at} ${input.id}`, input }));
}

/** How a figure was derived, in words with values and units: "32.5 bd ft × $7.80 per bd ft". Null for leaves. */
export function derivationWords(
  table: FigureTable,
  node: FigureNode,
  options: FormatOptions = {},
): string | null {
  if (!node.how) return null;
  // A rounding explains nothing unless what it rounded is seen in full.
  const isFull = node.how.operation.startsWith('round');
  const inputs = inputsOf(table, node).map((input) => formatAmount(input, { ...options, isFull }).text);
  const isLong = inputs.length > READ_IN_ONE_LINE;
  const read = isLong
    ? [...inputs.slice(0, READ_IN_ONE_LINE - 1), `${inputs.length - READ_IN_ONE_LINE + 1} more`]
    : inputs;
  return OPERATIONS[node.how.operation]
    .phrase(read, node.how.settings ?? {})
    .replaceAll(' x ', ' × ')
    .replaceAll(' - ', ' \u2212 ');
}

/** The working told over a few levels, in sentences; none where the line of its own inputs already says all of it. */
export function toldWords(
  table: FigureTable,
  node: FigureNode,
  options: FormatOptions = {},
): readonly string[] {
  if (inputsOf(table, node).every(({ how }) => how === undefined)) return [];
  return runningDerivation(table, node.id, (one) => {
    const { text } = formatAmount(one, options);
    return { text, isExact: text === formatAmount(one, { ...options, isFull: true }).text };
  });
}

const SOURCE_WORDS: Readonly<Record<SourceKind, string>> = {
  'price-list': 'Price list',
  'supplier-terms': 'Supplier',
  'tool-record': 'Tool record',
  'shop-rate': 'Shop rate',
  'bill-of-materials': 'Bill of materials',
  'measured-time': 'Measured time',
  entered: 'Entered',
  'standard-allowance': 'Standard allowance',
  'common-practice': 'Common practice',
  definition: 'By definition',
  published: 'Published',
  'exchange-rate': 'Exchange rate',
  'cutting-plan': 'Cutting plan',
  'cost-sheet': 'Cost sheet',
  'what-if': 'What if',
  simulation: 'Simulation',
  'own-value': 'Own value',
};

/** The kind of a source, as a word before its text. */
export function sourceWords(kind: SourceKind): string {
  return SOURCE_WORDS[kind];
}
