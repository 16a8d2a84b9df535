import { type Decimal, decimal } from '@scantling/decimals';
import type { Formula } from './formula.ts';

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

/** What is wrong with a value of a parameter, or null. */
export function valueFault(parameter: Parameter, text: string): ValueFault | null {
  if (parameter.kind === 'material') {
    const { choices = [] } = parameter;
    if (text === '') return { message: 'is empty', mend: 'choose a material' };
    if (choices.length === 0 || choices.includes(text)) return null;
    return { message: `is "${text}", which is none of its choices`, mend: `choose ${choices.join(', ')}` };
  }
  if (!NUMBER.test(text)) return { message: `is "${text}", which is no number`, mend: wanted(parameter) };
  return boundFault(parameter, decimal(text));
}

/** What is wrong with the number a parameter comes to, or null. */
export function boundFault(parameter: Parameter, value: Decimal): ValueFault | null {
  const { kind, least, greatest } = parameter;
  const fault = (why: string) => ({ message: `is ${value.toString()}, ${why}`, mend: wanted(parameter) });
  if (kind === 'count' && !value.isInteger()) return fault('which is no whole number');
  if (value.lt(0) || (kind === 'length' && value.isZero())) return fault('which is too little');
  if (least !== undefined && value.lt(least)) return fault(`less than ${least}`);
  if (greatest !== undefined && value.gt(greatest)) return fault(`more than ${greatest}`);
  return null;
}

function wanted({ kind, least, greatest }: Parameter): string {
  const what = kind === 'length' ? 'a length in mm' : kind === 'count' ? 'a whole number' : 'a number';
  const limits = [
    ...(least === undefined ? [] : [`from ${least}`]),
    ...(greatest === undefined ? [] : [`up to ${greatest}`]),
  ];
  return ['enter', what, ...limits].join(' ');
}
