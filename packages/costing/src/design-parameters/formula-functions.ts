import { derive, type Figure, number } from '@scantling/figures';
import type { LengthUnit } from '@scantling/units';
import { FormulaError } from './formula-error.ts';
import { alike, asLength, type FormulaScope, type Measure } from './measure.ts';

/** A function of formulas: its inputs worked out, and its own text as the label. */
type FormulaFunction = (label: string, inputs: readonly Measure[], scope: FormulaScope) => Measure;

function extreme(name: string, operation: 'least' | 'greatest'): FormulaFunction {
  return (label, inputs, scope) => {
    if (inputs.length < 2) throw new FormulaError(`asks ${name} of fewer than two`, `write ${name}(a, b)`);
    const among = alike('compares', inputs, scope);
    return among.kind === 'length'
      ? { kind: 'length', figure: derive(label, 'mm', operation, among.figures) }
      : {
          kind: 'number',
          figure: derive(label, 'ratio', operation, among.figures),
          isBare: among.isBare,
        };
  };
}

type Rounding = <U extends 'mm' | 'ratio'>(label: string, value: Figure<U>, step: Figure<U>) => Figure<U>;

const up: Rounding = (label, value, step) => derive(label, value.unit, 'round-up', [value, step]);
const down: Rounding = (label, value, step) => derive(label, value.unit, 'round-down', [value, step]);
const nearest: Rounding = (label, value, step) => {
  const half = derive(`half of ${step.label}`, value.unit, 'quotient', [step, number(2)]);
  const raised = derive(`${value.label} and half a step`, value.unit, 'sum', [value, half]);
  return down(label, raised, step);
};

/** To whole numbers, or to multiples of a step given beside it; a length needs the step. */
function rounding(name: string, round: Rounding): FormulaFunction {
  return (label, inputs, scope) => {
    const [value, step] = inputs;
    if (value === undefined || inputs.length > 2)
      throw new FormulaError(
        `asks ${name} of ${inputs.length} values`,
        `write ${name}(a), or ${name}(a, step)`,
      );
    if (step === undefined && value.kind === 'length')
      throw new FormulaError(
        `asks ${name} of a length without a step`,
        `write ${name}(${value.figure.label}, 1) for whole ${scope.unit === 'in' ? 'inches' : 'millimetres'}`,
      );
    const steps = step ?? { kind: 'number' as const, figure: number(1), isBare: true };
    if (steps.figure.value.lte(0))
      throw new FormulaError(`rounds to a step of ${steps.figure.value}`, 'give a step above 0');
    const both = alike('rounds', [value, steps], scope);
    if (both.kind === 'length') {
      const [figure, by] = both.figures;
      if (figure && by) return { kind: 'length', figure: round(label, figure, by) };
    } else {
      const [figure, by] = both.figures;
      if (figure && by) return { kind: 'number', figure: round(label, figure, by), isBare: both.isBare };
    }
    throw new RangeError(`${name} lost a value`);
  };
}

function inUnit(unit: LengthUnit): FormulaFunction {
  return (_label, inputs) => {
    const [value] = inputs;
    if (value === undefined || inputs.length > 1)
      throw new FormulaError(`asks ${unit} of ${inputs.length} values`, `write ${unit}(40)`);
    if (value.kind === 'length')
      throw new FormulaError(
        `asks ${unit} of ${value.figure.label}, which is a length already`,
        `leave ${unit}(...) out`,
      );
    return { kind: 'length', figure: asLength(value.figure, unit) };
  };
}

/** The functions a formula may call. */
export const FORMULA_FUNCTIONS: Readonly<Record<string, FormulaFunction>> = {
  min: extreme('min', 'least'),
  max: extreme('max', 'greatest'),
  floor: rounding('floor', down),
  ceil: rounding('ceil', up),
  round: rounding('round', nearest),
  mm: inUnit('mm'),
  in: inUnit('in'),
};
