import { derive, difference, type Figure, sum } from '@scantling/figures';
import type { Unit } from '@scantling/units';
import { type Comparison, type Expression, expressionText } from './expression.ts';
import { DividesByZeroError, FormulaError } from './formula-error.ts';
import { FORMULA_FUNCTIONS } from './formula-functions.ts';
import { alike, type FormulaScope, type Measure, writtenNumber } from './measure.ts';

/**
 * Works an expression out as a figure that shows its working. Lengths and numbers are kept apart: lengths add to
 * lengths, a length divided by a length is a number, a length times a length is neither.
 * @throws FormulaError
 */
export function workOutFormula(expression: Expression, scope: FormulaScope): Measure {
  const label = expressionText(expression);
  switch (expression.kind) {
    case 'number':
      return { kind: 'number', figure: writtenNumber(expression.text), isBare: true };
    case 'name':
      return scope.lookUp(expression.name);
    case 'sum':
      return workOutSum(label, expression, scope);
    case 'product':
      return workOutProduct(label, expression, scope);
    case 'condition':
      return workOutCondition(label, expression, scope);
    case 'call': {
      const inputs = expression.inputs.map((one) => workOutFormula(one, scope));
      const work = FORMULA_FUNCTIONS[expression.name];
      if (work === undefined) throw new FormulaError(`calls "${expression.name}"`, 'use another function');
      return work(label, inputs, scope);
    }
  }
}

function sumOf<U extends 'mm' | 'ratio'>(
  label: string,
  unit: U,
  plus: readonly Figure<U>[],
  minus: readonly Figure<U>[],
): Figure<U> {
  const all = (of: readonly Figure<U>[], name: string): Figure<U> => {
    const [only] = of;
    return of.length === 1 && only ? only : derive(name, unit, 'sum', of);
  };
  if (minus.length === 0) return all(plus, label);
  const joined = (of: readonly Figure<U>[]) => of.map((one) => one.label).join(' + ');
  const added = plus.length === 0 ? sum('0', unit, []) : all(plus, joined(plus));
  return difference<Unit>(label, added, all(minus, joined(minus))) as Figure<U>;
}

function workOutSum(
  label: string,
  { plus, minus }: Extract<Expression, { kind: 'sum' }>,
  scope: FormulaScope,
): Measure {
  const terms = alike(
    'adds',
    [...plus, ...minus].map((one) => workOutFormula(one, scope)),
    scope,
  );
  const at = plus.length;
  return terms.kind === 'length'
    ? { kind: 'length', figure: sumOf(label, 'mm', terms.figures.slice(0, at), terms.figures.slice(at)) }
    : {
        kind: 'number',
        figure: sumOf(label, 'ratio', terms.figures.slice(0, at), terms.figures.slice(at)),
        isBare: terms.isBare,
      };
}

const POWERS = ['ratio', 'mm', 'mm2', 'mm3'] as const satisfies readonly Unit[];

function factorsOf(measures: readonly Measure[]) {
  const lengths = measures.filter((one) => one.kind === 'length').length;
  const unit = POWERS[lengths];
  if (unit === undefined)
    throw new FormulaError('multiplies more than three lengths', 'divide by a length in between');
  const [only] = measures;
  const figure: Figure =
    measures.length === 1 && only
      ? only.figure
      : derive(
          measures.map((one) => one.figure.label).join(' * '),
          unit,
          'product',
          measures.map((one) => one.figure),
        );
  return { lengths, figure };
}

function workOutProduct(
  label: string,
  { times, by }: Extract<Expression, { kind: 'product' }>,
  scope: FormulaScope,
): Measure {
  const above = times.map((one) => workOutFormula(one, scope));
  const below = by.map((one) => workOutFormula(one, scope));
  const zero = below.find((one) => one.figure.value.isZero());
  if (zero) throw new DividesByZeroError(zero.figure.label);
  const top = factorsOf(above);
  const bottom = below.length === 0 ? null : factorsOf(below);
  const power = top.lengths - (bottom?.lengths ?? 0);
  if (power < 0)
    throw new FormulaError(
      'divides a number by a length',
      'make the number a length with mm(...) or in(...)',
    );
  if (power > 1)
    throw new FormulaError(
      `multiplies lengths, which is ${power === 2 ? 'an area' : 'a volume'} and no length`,
      'divide by a length',
    );
  const figure = <U extends 'mm' | 'ratio'>(unit: U): Figure<U> =>
    bottom === null
      ? { ...top.figure, label, unit }
      : derive(label, unit, 'quotient', [top.figure, bottom.figure]);
  if (power === 1) return { kind: 'length', figure: figure('mm') };
  const isBare = [...above, ...below].every((one) => one.kind === 'number' && one.isBare);
  return { kind: 'number', figure: figure('ratio'), isBare };
}

function workOutCondition(
  label: string,
  expression: Extract<Expression, { kind: 'condition' }>,
  scope: FormulaScope,
): Measure {
  const { comparison, left, right } = expression;
  const sides = alike(
    'compares',
    [left, right].map((one) => workOutFormula(one, scope)),
    scope,
  );
  const [a, b]: readonly Figure[] = sides.figures;
  if (a === undefined || b === undefined) throw new RangeError('a comparison lost a side');
  const [taken, other] = holds(comparison, a, b)
    ? [expression.reached, expression.otherwise]
    : [expression.otherwise, expression.reached];
  const value = workOutFormula(taken, scope);
  const idle = workOutIdle(other, scope);
  if (idle === null) return value;
  const isReached = taken === expression.reached;
  const branches = alike('chooses between', isReached ? [value, idle] : [idle, value], scope);
  const pick = <U extends 'mm' | 'ratio'>(unit: U, figures: readonly Figure<U>[]): Figure<U> =>
    derive(label, unit, 'choose', chooseInputs(comparison, a, b, figures, label));
  return branches.kind === 'length'
    ? { kind: 'length', figure: pick('mm', branches.figures) }
    : { kind: 'number', figure: pick('ratio', branches.figures), isBare: branches.isBare };
}

/** The branch that is not taken, so that the working holds when a value changes; null where it divides by 0 now. */
function workOutIdle(expression: Expression, scope: FormulaScope): Measure | null {
  try {
    return workOutFormula(expression, scope);
  } catch (error) {
    if (error instanceof DividesByZeroError) return null;
    throw error;
  }
}

function holds(comparison: Comparison, a: Figure, b: Figure): boolean {
  const order = a.value.comparedTo(b.value);
  switch (comparison) {
    case '<':
      return order < 0;
    case '<=':
      return order <= 0;
    case '>':
      return order > 0;
    case '>=':
      return order >= 0;
    case '==':
      return order === 0;
    case '!=':
      return order !== 0;
  }
}

/** Inputs of the operation `choose`, whose third comes where the first is at least the second, and its fourth elsewhere. */
function chooseInputs(
  comparison: Comparison,
  a: Figure,
  b: Figure,
  [reached, otherwise]: readonly Figure[],
  label: string,
): Figure[] {
  if (reached === undefined || otherwise === undefined) throw new RangeError('a condition lost a branch');
  const equal = (yes: Figure, no: Figure) => [a, b, derive(label, yes.unit, 'choose', [b, a, yes, no]), no];
  switch (comparison) {
    case '>=':
      return [a, b, reached, otherwise];
    case '<=':
      return [b, a, reached, otherwise];
    case '<':
      return [a, b, otherwise, reached];
    case '>':
      return [b, a, otherwise, reached];
    case '==':
      return equal(reached, otherwise);
    case '!=':
      return equal(otherwise, reached);
  }
}
