import type { SheetResultName } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import type { FigureNode, FigureTable } from '@scantling/figures';
import type { LengthSystem } from '@scantling/units';
import { inImperial } from '../../figures/in-imperial.ts';
import { leafWords } from '../../figures/leaf-text.ts';
import type { MovesRow } from './moves-shape.ts';
import { movedWords, RESULT_LABELS, resultWords } from './result-words.ts';

export interface MovesVoice {
  readonly table: FigureTable;
  /** The result as it stands. */
  readonly now: FigureNode;
  readonly name: SheetResultName;
  readonly system: LengthSystem;
  readonly locale: string;
}

/** A result at one end, less what it is now: "+$12.00", "−0.3 points"; without the share of it. */
export function differenceWords({ now, name, locale }: MovesVoice, difference: string): string {
  return movedWords({ name, difference, share: null }, now, locale);
}

function valueWords({ table, system, locale }: MovesVoice, leaf: FigureNode, id: string): string {
  const value = decimal(table[id]?.value ?? '0')
    .toSignificantDigits(8)
    .toFixed();
  const length = system === 'imperial' ? inImperial({ unit: leaf.unit, value }, locale) : null;
  return length?.text ?? leafWords(leaf, value, system, locale);
}

function leafOf({ table }: MovesVoice, row: MovesRow): FigureNode | undefined {
  return table[row.figure];
}

/** "$8.19 per bd ft to $10.01 per bd ft" */
export function triedWords(voice: MovesVoice, row: MovesRow): string {
  const leaf = leafOf(voice, row);
  if (leaf === undefined) return '';
  return `${valueWords(voice, leaf, row.low)} to ${valueWords(voice, leaf, row.high)}`;
}

/** What was bounded, in words; empty where nothing was. */
export function boundWords(voice: MovesVoice, row: MovesRow): string {
  const leaf = leafOf(voice, row);
  if (leaf === undefined || row.keptAt.length === 0) return '';
  return row.keptAt
    .map((end) =>
      end === 'high'
        ? `kept at ${valueWords(voice, leaf, row.high)}, the most it can be`
        : `kept at ${valueWords(voice, leaf, row.low)}, the least it can be`,
    )
    .join('; ');
}

/** One bar, for those who hear it. */
export function barWords(voice: MovesVoice, row: MovesRow): string {
  const leaf = leafOf(voice, row);
  if (leaf === undefined || row.resultLow === null || row.resultHigh === null) return '';
  const [low, high] = [row.resultLow, row.resultHigh].map((id) =>
    resultWords(voice.name, voice.table[id]?.value ?? '0', voice.now, voice.locale),
  );
  const result = RESULT_LABELS[voice.name].toLowerCase();
  return `${leaf.label}: at ${valueWords(voice, leaf, row.low)} the ${result} is ${low}, at ${valueWords(voice, leaf, row.high)} it is ${high}; working`;
}

function theResult(name: SheetResultName): string {
  const words = RESULT_LABELS[name];
  return name === 'hourlyEarnings'
    ? 'what your hour brings'
    : `the ${words[0]?.toLowerCase()}${words.slice(1)}`;
}

/** The answer in plain words: what moves the result most, and how far. */
export function headline(voice: MovesVoice, [first, second]: readonly MovesRow[]): string {
  const leaf = first && leafOf(voice, first);
  if (first === undefined || leaf === undefined || first.resultHigh === null)
    return `Nothing moves ${theResult(voice.name)} by so much that it shows.`;
  const high = voice.table[first.resultHigh]?.value ?? '0';
  const difference = decimal(high).minus(voice.now.value);
  const now = leafWords(leaf, leaf.value, voice.system, voice.locale);
  const moved = differenceWords(voice, difference.abs().toFixed()).replace('+', '');
  const effect = difference.isZero()
    ? `${theResult(voice.name)} stays as it is`
    : `${theResult(voice.name)} is ${moved} ${difference.isNegative() ? 'lower' : 'higher'}`;
  const next = second === undefined ? undefined : leafOf(voice, second);
  const then = next === undefined ? '' : ` Next comes “${next.label}”.`;
  return `“${leaf.label}” moves ${theResult(voice.name)} most: at ${valueWords(voice, leaf, first.high)} instead of ${now}, ${effect}.${then}`;
}
