import { isFormula, type Parameter } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import {
  APPROXIMATION_MARK,
  formatLength,
  type LengthSystem,
  parseLength,
  UnreadableLengthError,
} from '@scantling/units';
import type { FieldMessage } from '../../../components/field.tsx';
import { plainDecimal } from '../../../lib/percent.ts';
import type { DesignRevision } from '../api/get-design-revision.ts';

/** Which form of its design a sheet is for. */
export interface DesignChoice {
  /** The revision it is pinned to; null follows the newest. */
  readonly revision: number | null;
  readonly variant: string | null;
  /** By parameter id: millimetres, numbers, codes of materials. */
  readonly parameterValues: Readonly<Record<string, string>>;
}

export function choiceOf({ revision, variant, parameterValues }: DesignChoice): DesignChoice {
  return { revision, variant, parameterValues };
}

export function isSameChoice(one: DesignChoice, other: DesignChoice): boolean {
  const written = ({ revision, variant, parameterValues }: DesignChoice) =>
    JSON.stringify([revision, variant, Object.entries(parameterValues).toSorted()]);
  return written(one) === written(other);
}

/** The same revision with nothing chosen. */
export function asDrawn({ revision }: DesignChoice): DesignChoice {
  return { revision, variant: null, parameterValues: {} };
}

type Drawing = Pick<DesignRevision, 'parameters' | 'variants'>;

/** The value a parameter has where nothing but the variant is chosen; null where it is worked out from others. */
export function baseValue(drawing: Drawing, parameter: Parameter, variant: string | null): string | null {
  if (isFormula(parameter.value)) return null;
  const chosen = drawing.variants.find(({ id }) => id === variant)?.values[parameter.id];
  return chosen ?? parameter.value;
}

/** A value as it is typed back: a length exactly, in millimetres where no fraction of an inch says it. */
export function valueText(parameter: Parameter, value: string, system: LengthSystem): string {
  if (parameter.kind !== 'length') return value;
  const written = formatLength(value, system, { denominator: 64, places: 6 });
  return written.startsWith(APPROXIMATION_MARK) ? `${value} mm` : written;
}

/** How far a number is from what was drawn, in words ("+150 mm"); null where it is the same or no number. */
export function awayWords(
  parameter: Parameter,
  value: string,
  drawn: string,
  system: LengthSystem,
): string | null {
  if (parameter.kind === 'material') return null;
  const away = decimal(value).minus(drawn);
  if (away.isZero()) return null;
  const size = away.abs().toString();
  const words = parameter.kind === 'length' ? formatLength(size, system, { denominator: 64 }) : size;
  return `${away.isNegative() ? '−' : '+'}${words}`;
}

export type ReadValue = { readonly value: string } | { readonly error: FieldMessage };

/** What a text says as a value of a parameter. */
export function readValue(parameter: Parameter, typed: string, system: LengthSystem): ReadValue {
  const text = typed.trim();
  if (parameter.kind === 'material') return { value: text };
  if (parameter.kind === 'length') {
    try {
      return { value: parseLength(text, system === 'metric' ? 'mm' : 'in').toFixed() };
    } catch (error) {
      if (!(error instanceof UnreadableLengthError)) throw error;
      const mend = 'Write it like 600, 60 cm, 23 5/8" or 1\' 11 5/8".';
      return { error: { message: `"${text}" is no length.`, mend } };
    }
  }
  const number = plainDecimal(text);
  if (/^\d{1,9}(\.\d{1,12})?$/.test(number)) return { value: number };
  const mend = parameter.kind === 'count' ? 'Write digits only, such as 4.' : 'Write a number, such as 1.5.';
  return { error: { message: `"${text}" is no number.`, mend } };
}

/** The choice with one value changed; a value that the variant has anyway is not kept apart. */
export function withValue(
  choice: DesignChoice,
  drawing: Drawing,
  parameter: Parameter,
  value: string,
): DesignChoice {
  const { [parameter.id]: _before, ...others } = choice.parameterValues;
  const base = baseValue(drawing, parameter, choice.variant);
  const isBase =
    base === value || (parameter.kind !== 'material' && base !== null && decimal(base).eq(value));
  return { ...choice, parameterValues: isBase ? others : { ...others, [parameter.id]: value } };
}
