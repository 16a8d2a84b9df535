import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import type { LengthUnit } from '@scantling/units';
import type { Formula } from './formula.ts';
import { lengthIn } from './length-in.ts';

export const PARAMETER_KINDS = ['length', 'count', 'number', 'material'] as const;
export type ParameterKind = (typeof PARAMETER_KINDS)[number];

/** Most parameters of a design, and most variants; more is two designs. */
export const MOST_PARAMETERS = 40;
export const MOST_VARIANTS = 30;

/** One thing about a design that may be chosen: an overall size, a number of drawers, the wood. */
export interface Parameter {
  /** How formulas name it: a letter, then letters, digits or _. */
  readonly id: string;
  readonly label: string;
  readonly kind: ParameterKind;
  /** As drawn: millimetres, a whole number, a number, or the code of a material or family; or worked out from others. */
  readonly value: string | Formula;
  /** Least and greatest that make sense, in the same unit as the value; not of materials. */
  readonly least?: string;
  readonly greatest?: string;
  /** Codes of the materials or families to choose from; any where absent. */
  readonly choices?: readonly string[];
}

/** A named set of values: "Long", "In oak". */
export interface Variant {
  readonly id: string;
  readonly name: string;
  /** By parameter id; what is not named stays as drawn. */
  readonly values: Readonly<Record<string, string>>;
}

/** What is chosen of a design: a variant, and over it values of single parameters. */
export interface ParameterChoice {
  readonly variant?: string | null;
  readonly values?: Readonly<Record<string, string>>;
}

const ID = /^[a-z][a-zA-Z0-9_]{0,39}$/;
/** Words that formulas or lengths give a meaning of their own. */
const TAKEN = new Set(
  'min max floor ceil round mm cm m in inch inches ft foot feet true false null this'.split(' '),
);

/** What is wrong with a parameter's id, or null. */
export function idFault(id: string): string | null {
  if (!ID.test(id)) return 'is no name that a formula can use';
  return TAKEN.has(id) ? 'means something else in formulas' : null;
}

const NUMBER = /^\d{1,9}(?:\.\d{1,12})?$/;

interface ValueFault {
  readonly message: string;
  readonly mend: string;
}

/** What is wrong with a value of a parameter, or null; lengths are told in the design's unit. */
export function valueFault(parameter: Parameter, text: string, unit: LengthUnit): ValueFault | null {
  if (parameter.kind === 'material') {
    const { choices = [] } = parameter;
    if (text === '') return { message: 'is empty', mend: 'choose a material' };
    if (choices.length === 0 || choices.includes(text)) return null;
    return { message: `is "${text}", which is none of its choices`, mend: `choose ${choices.join(', ')}` };
  }
  if (!NUMBER.test(text))
    return { message: `is "${text}", which is no number`, mend: wanted(parameter, unit) };
  return boundFault(parameter, decimal(text), unit);
}

function written({ kind }: Parameter, value: DecimalLike, unit: LengthUnit): string {
  return kind === 'length' ? lengthIn(unit, value) : decimal(value).toString();
}

/** What is wrong with the number a parameter comes to, or null. */
export function boundFault(parameter: Parameter, value: Decimal, unit: LengthUnit): ValueFault | null {
  const { kind, least, greatest } = parameter;
  const told = (number: DecimalLike): string => written(parameter, number, unit);
  const fault = (why: string) => ({ message: `is ${told(value)}, ${why}`, mend: wanted(parameter, unit) });
  if (kind === 'count' && !value.isInteger()) return fault('which is no whole number');
  if (value.lt(0) || (kind === 'length' && value.isZero())) return fault('which is too little');
  if (least !== undefined && value.lt(least)) return fault(`less than ${told(least)}`);
  if (greatest !== undefined && value.gt(greatest)) return fault(`more than ${told(greatest)}`);
  return null;
}

function wanted(parameter: Parameter, unit: LengthUnit): string {
  const { kind, least, greatest } = parameter;
  const length = unit === 'in' ? 'a length in inches' : 'a length in mm';
  const what = kind === 'length' ? length : kind === 'count' ? 'a whole number' : 'a number';
  const limits = [
    ...(least === undefined ? [] : [`from ${written(parameter, least, unit)}`]),
    ...(greatest === undefined ? [] : [`up to ${written(parameter, greatest, unit)}`]),
  ];
  return ['enter', what, ...limits].join(' ');
}
