import type { SheetResultName } from '@scantling/contracts';
import { type Decimal, decimal } from '@scantling/decimals';
import type { FigureNode } from '@scantling/figures';
import type { LengthSystem } from '@scantling/units';
import { formatPercent } from '../../../lib/format.ts';
import { inImperial } from '../../figures/in-imperial.ts';
import { leafWords } from '../../figures/leaf-text.ts';
import type { SheetSolution } from '../api/solve-cost-sheet.ts';
import { RESULT_LABELS, resultWords } from './result-words.ts';

/** A price that is held while the cost moves, and the margin wanted of it. */
export interface HeldPrice {
  readonly price: string;
  readonly margin: string;
}

export interface SolveVoice {
  readonly leaf: FigureNode;
  readonly name: SheetResultName;
  /** The result as it stands. */
  readonly now: FigureNode;
  /** What the result is to come to, as decimal text. */
  readonly target: string;
  readonly held: HeldPrice | null;
  readonly system: LengthSystem;
  readonly locale: string;
}

/** More digits than these nobody enters. */
const DIGITS = 7;

/** A value of the input as it is read. */
export function inputWords({ leaf, system, locale }: SolveVoice, value: string): string {
  const short = decimal(value).toSignificantDigits(DIGITS).toFixed();
  const length = system === 'imperial' ? inImperial({ unit: leaf.unit, value: short }, locale) : null;
  return length?.text ?? leafWords(leaf, short, system, locale);
}

/** A value of the result as it is read. */
export function outcomeWords({ name, now, locale }: SolveVoice, value: string): string {
  return resultWords(name, value, now, locale);
}

function theResult({ name }: SolveVoice): string {
  return name === 'hourlyEarnings' ? 'what your hour brings' : `the ${RESULT_LABELS[name].toLowerCase()}`;
}

/** "the net price to be $1,900.00", "the price as it stands, $2,690.00, to leave a margin of 10.0 %" */
export function wantedWords(voice: SolveVoice): string {
  const { held, locale, now } = voice;
  if (held === null) return `${theResult(voice)} to be ${outcomeWords(voice, voice.target)}`;
  const price = resultWords('netPrice', held.price, now, locale);
  return decimal(held.margin).isZero()
    ? `the price as it stands, ${price}, to leave nothing`
    : `the price as it stands, ${price}, to leave a margin of ${formatPercent(held.margin, 1, { locale, places: 1 })}`;
}

function apart(voice: SolveVoice, value: Decimal): string {
  const away = value.minus(voice.leaf.value);
  if (away.isZero()) return 'as it is now';
  const share = decimal(voice.leaf.value).isZero()
    ? ''
    : ` (${formatPercent(away.div(voice.leaf.value).abs().toFixed(6), 1, { locale: voice.locale, places: 1 })})`;
  return `${inputWords(voice, away.abs().toFixed())} ${away.isNegative() ? 'less' : 'more'}${share}`;
}

function crossingWords(voice: SolveVoice, { figures, crossings, searched }: SheetSolution): string {
  const value = (id: string): Decimal => decimal(figures[id]?.value ?? '0');
  const name = `“${voice.leaf.label}”`;
  const now = `It is ${inputWords(voice, voice.leaf.value)} now`;
  const [only, ...others] = crossings;
  if (only === undefined) return '';
  if (others.length > 0) {
    const listed = crossings.map(({ at }) => inputWords(voice, value(at.value).toFixed()));
    return `For ${wantedWords(voice)}, ${name} may be ${listed.slice(0, -1).join(', ')} or ${listed.at(-1)}. ${now}.`;
  }
  const [from, to, at] = [value(only.from), value(only.to), value(only.at.value)];
  if (from.eq(to))
    return `For ${wantedWords(voice)}, ${name} must be ${inputWords(voice, at.toFixed())}. ${now}: ${apart(voice, at)}.`;
  const ends = to.gte(value(searched.high))
    ? `${inputWords(voice, from.toFixed())} or more`
    : from.lte(value(searched.low))
      ? `${inputWords(voice, to.toFixed())} or less`
      : `anything from ${inputWords(voice, from.toFixed())} to ${inputWords(voice, to.toFixed())}`;
  return `For ${wantedWords(voice)}, ${name} may be ${ends}: rounding or whole packs make no difference between them. ${now}.`;
}

function noneWords(voice: SolveVoice, solution: SheetSolution): string {
  const { figures, why, steps, searched, least, greatest } = solution;
  const value = (id: string | null): string => (id === null ? '0' : (figures[id]?.value ?? '0'));
  const name = `“${voice.leaf.label}”`;
  const result = theResult(voice);
  const [step] = steps;
  if (why === 'steps-over' && step !== undefined) {
    const [before, after] = [step.below, step.above].map(({ value: at, result: out }) => ({
      at: inputWords(voice, value(at)),
      out: outcomeWords(voice, value(out)),
    }));
    const sides =
      before?.at === after?.at
        ? `Just below ${before?.at} it is ${before?.out}, just above it ${after?.out}`
        : `At ${before?.at} it is ${before?.out}, at ${after?.at} it is ${after?.out}`;
    return `No value of ${name} gives exactly that: ${result} steps over ${outcomeWords(voice, voice.target)}, because of rounding, whole packs or a price break. ${sides}.`;
  }
  if (why === 'does-not-move')
    return `${sentenceOf(result)} does not follow ${name}, so no value of it helps.`;
  if (why === 'never-reaches' && least !== null && greatest !== null) {
    const span = `${inputWords(voice, value(searched.low))} and ${inputWords(voice, value(searched.high))}`;
    const gap = (probe: typeof least) => decimal(value(probe.residual)).abs();
    const near = gap(least).lte(gap(greatest)) ? least : greatest;
    return `No value of ${name} between ${span} is enough for ${wantedWords(voice)}. ${sentenceOf(result)} comes nearest at ${inputWords(voice, value(near.value))}: ${outcomeWords(voice, value(near.result))}.`;
  }
  return `${sentenceOf(result)} has no answer for any value of ${name} that was tried.`;
}

function sentenceOf(words: string): string {
  return `${words[0]?.toUpperCase() ?? ''}${words.slice(1)}`;
}

/** The answer in words. */
export function solutionWords(voice: SolveVoice, solution: SheetSolution): string {
  return solution.crossings.length > 0 ? crossingWords(voice, solution) : noneWords(voice, solution);
}
