import { decimal } from '@scantling/decimals';
import { OPERATIONS } from '../operations/index.ts';
import type { FigureNode, FigureTable } from '../table.ts';
import { isNothing, type ReadingStep, readingStep, sentInputs } from './reading-step.ts';

/** A figure as it is read out: value and unit, and whether the text says the value to its last digit. */
export interface ReadValue {
  readonly text: string;
  readonly isExact: boolean;
}

export type ValueReader = (node: FigureNode) => ReadValue;

/** More steps than this are not followed in one breath. */
const STEPS_IN_A_SENTENCE = 4;
/** The figure itself, and what it mostly comes from; the last only after short ones. */
const SENTENCES = 3;
const LETTERS_THAT_SUFFICE = 260;
/** Terms of a long sum that are named. */
const TERMS_NAMED = 3;

interface Sentence {
  readonly text: string;
  /** What may be read on from: a figure named in it whose own working was not. */
  readonly next: FigureNode | undefined;
  /** A name and a value: nothing was done on the way to it. */
  readonly isBare?: boolean;
}

/** "Table saw" of "Table saw: life in hours"; '' where a label names no subject. */
function subjectOf(label: string): string {
  const end = label.lastIndexOf(': ');
  return end < 0 ? '' : label.slice(0, end + 2);
}

class Reader {
  readonly #table: FigureTable;
  readonly #read: ValueReader;
  /** Named already, so that it need not be named with every figure of it. */
  readonly #subjects = new Set<string>();

  constructor(table: FigureTable, read: ValueReader, root: FigureNode) {
    this.#table = table;
    this.#read = read;
    this.#subjects.add(subjectOf(root.label));
  }

  label({ label }: FigureNode): string {
    const subject = subjectOf(label);
    const short = this.#subjects.has(subject) ? label.slice(subject.length) : label;
    this.#subjects.add(subject);
    return short;
  }

  // A number that is its own name ("12") is said once; a name that is a formula ("1 - margin") is kept together.
  readonly #name = (node: FigureNode): string => {
    const { text } = this.#read(node);
    if (node.label === text) return text;
    const label = this.label(node);
    return `${/ [-+x/] /.test(label) ? `(${label})` : label} ${text}`;
  };

  /** " = $253.50"; "=" only where every number in the step is said to its last digit. */
  #result(node: FigureNode, ...from: readonly FigureNode[]): string {
    const isExact = [node, ...from].every((one) => this.#read(one).isExact);
    return ` ${isExact ? '=' : '≈'} ${this.#read(node).text}`;
  }

  /** A figure by its own operation alone: the start of a run, or all there is to say. */
  #whole(node: FigureNode): Sentence {
    const inputs = sentInputs(this.#table, node);
    if (node.how === undefined || inputs.length === 0)
      return { text: this.#name(node), next: undefined, isBare: true };
    const { operation, settings = {} } = node.how;
    if (operation !== 'sum') {
      const text = OPERATIONS[operation].phrase(inputs.map(this.#name), settings);
      return { text: text + this.#result(node, ...inputs), next: inputs.find(({ how }) => how) };
    }
    const terms = inputs
      .filter((term) => !isNothing(term))
      .sort((a, b) => decimal(b.value).abs().comparedTo(decimal(a.value).abs()));
    const named = terms.length <= TERMS_NAMED + 1 ? terms : terms.slice(0, TERMS_NAMED);
    const more = terms.length === named.length ? [] : [`${terms.length - named.length} more`];
    const text = [...named.map(this.#name), ...more].join(' + ');
    return { text: text + this.#result(node, ...terms), next: terms.find(({ how }) => how) };
  }

  /** A rounding, a bound or a factor that leaves what is shown as it was. */
  #changesNothing(node: FigureNode, { from }: ReadingStep): boolean {
    if (node.unit !== from.unit || node.currency !== from.currency) return false;
    return (
      decimal(node.value).eq(decimal(from.value)) ||
      (node.how?.operation === 'round' && this.#read(node).text === this.#read(from).text)
    );
  }

  sentence(root: FigureNode): Sentence {
    const run: { readonly node: FigureNode; readonly step: ReadingStep }[] = [];
    let start = root;
    while (run.length < STEPS_IN_A_SENTENCE) {
      const step = readingStep(this.#table, start);
      if (step === null) break;
      if (!this.#changesNothing(start, step)) run.unshift({ node: start, step });
      start = step.from;
    }
    if (run.length === 0) return this.#whole(start);
    let text = this.#name(start);
    let before = start;
    for (const { node, step } of run) {
      text += step.words(step.named.map(this.#name)) + this.#result(node, before, ...step.named);
      before = node;
    }
    const named = [start, ...run.flatMap(({ step }) => step.named)];
    return { text, next: named.find(({ how }) => how !== undefined) };
  }
}

/**
 * How a figure came about, as a few running calculations in words and units: "14 parts 23.4 bd ft / yield 0.72 =
 * 32.5 bd ft × Oak $7.80 per bd ft = $253.50". Each goes a few levels deep along what there is of it; steps that change
 * nothing are left out; "≈" stands wherever a number is shown shorter than it is. The next sentence takes up a figure
 * that the one before named without its working. Empty for leaves, for an id the table lacks, and without derivations.
 */
export function runningDerivation(table: FigureTable, id: string, read: ValueReader): readonly string[] {
  let node = table[id];
  if (node === undefined) return [];
  const reader = new Reader(table, read, node);
  const sentences: string[] = [];
  while (
    node?.how !== undefined &&
    sentences.length < SENTENCES &&
    sentences.join('').length < LETTERS_THAT_SUFFICE
  ) {
    const start: string = sentences.length === 0 ? '' : `${reader.label(node)}: `;
    const { text, next, isBare = false }: Sentence = reader.sentence(node);
    // The sentence before has said all that a mere name and value would say again.
    if (isBare && sentences.length > 0) break;
    sentences.push(start + text);
    node = next;
  }
  return sentences;
}
