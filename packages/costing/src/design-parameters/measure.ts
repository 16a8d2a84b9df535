import { constant, derive, type Figure, input, type Source } from '@scantling/figures';
import type { LengthUnit } from '@scantling/units';
import { FormulaError } from './formula-error.ts';

/** The value of an expression: a length, or a number. A number of literals alone is bare and can become a length. */
export type Measure =
  | { readonly kind: 'length'; readonly figure: Figure<'mm'> }
  | { readonly kind: 'number'; readonly figure: Figure<'ratio'>; readonly isBare: boolean };

const WRITTEN: Source = { kind: 'bill-of-materials', text: 'written in a formula of the design' };
const MM_IN = {
  mm: constant('a millimetre', 'mm', 1),
  in: constant('millimetres in an inch (exact)', 'mm', '25.4'),
} as const;

/** A number as the formula writes it. */
export function writtenNumber(text: string): Figure<'ratio'> {
  return input({ key: `written/${text}`, label: text, unit: 'ratio', value: text, source: WRITTEN });
}

/** A number as a length in a unit. */
export function asLength(figure: Figure<'ratio'>, unit: LengthUnit): Figure<'mm'> {
  const label = `${figure.label} ${unit}`;
  if (figure.how.kind !== 'input' || figure.how.source !== WRITTEN)
    return derive(label, 'mm', 'product', [figure, MM_IN[unit]]);
  const value = figure.value.times(MM_IN[unit].value);
  return input({ key: `written/${label}`, label, unit: 'mm', value, source: WRITTEN });
}

/** What a name stands for, and what a bare length is in. */
export interface FormulaScope {
  readonly unit: LengthUnit;
  /** @throws FormulaError where there is no such number */
  lookUp(name: string): Measure;
  /** Told whenever a bare number is taken as a length, so that the design's unit matters. */
  noteBareLength(): void;
}

export type Alike =
  | { readonly kind: 'length'; readonly figures: readonly Figure<'mm'>[] }
  | { readonly kind: 'number'; readonly figures: readonly Figure<'ratio'>[]; readonly isBare: boolean };

/** The same as lengths, where one of them is a length. @throws FormulaError where a length meets a number */
export function alike(what: string, measures: readonly Measure[], scope: FormulaScope): Alike {
  if (measures.every((one) => one.kind === 'number')) {
    const isBare = measures.every((one) => one.isBare);
    return { kind: 'number', figures: measures.map((one) => one.figure), isBare };
  }
  const figures = measures.map((one) => {
    if (one.kind === 'length') return one.figure;
    if (!one.isBare)
      throw new FormulaError(
        `${what} a length and a number (${one.figure.label})`,
        'make the number a length with mm(...) or in(...), or multiply it by one',
      );
    scope.noteBareLength();
    return asLength(one.figure, scope.unit);
  });
  return { kind: 'length', figures };
}
