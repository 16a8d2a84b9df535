import { type Decimal, type DecimalLike, decimal, NotADecimalError } from '@scantling/decimals';
import { type Figure, input, type LeafBounds, type Source } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { isMoneyUnit, type Unit } from '@scantling/units';
import { CostingInputError } from './input-error.ts';

/** What every calculation is told beside its own input. */
export interface CostingContext {
  /** The currency of every amount in the input. */
  readonly currency: Currency;
  /** Where the leaves' stable keys begin ("machine/planer"); each calculation has a default of its own. */
  readonly keyPrefix?: string;
  /** Where the values came from; entered by hand when absent. */
  readonly source?: Source;
}

/** What a leaf is called and which values it can take. */
export interface LeafRules<U extends Unit> {
  readonly label: string;
  readonly unit: U;
  /** Must be greater than this. */
  readonly above?: number;
  /** Must not be less than this. */
  readonly from?: number;
  /** Must not be greater than this. */
  readonly to?: number;
  readonly whole?: boolean;
  /** Overrides the reader's source, for a leaf that comes from elsewhere. */
  readonly source?: Source;
  readonly note?: string;
}

interface ReaderSettings {
  readonly keyPrefix: string;
  readonly currency: Currency;
  readonly source: Source;
  /** What the labels speak of ("Planer"). */
  readonly subject: string;
  /** Path of this record in the whole input, for error messages. */
  readonly path?: string;
}

/**
 * Turns the fields of one input record into checked leaves. A field read twice gives the same figure, so
 * that a shared input stands once in an answer. Keys are the prefix and the field's path in kebab-case.
 */
export class LeafReader {
  readonly #settings: ReaderSettings;
  readonly #known = new Map<string, Figure>();

  constructor(settings: ReaderSettings) {
    this.#settings = settings;
  }

  /** @throws CostingInputError where the value is missing, no number or out of bounds */
  read<U extends Unit>(field: string, value: DecimalLike | null | undefined, rules: LeafRules<U>): Figure<U> {
    const known = this.#known.get(field);
    if (known) return known as Figure<U>;
    const checked = this.#check(field, value, rules);
    const made = input({
      key: `${this.#settings.keyPrefix}/${kebab(field)}`,
      label: this.#settings.subject === '' ? rules.label : `${this.#settings.subject}: ${rules.label}`,
      unit: rules.unit,
      value: checked,
      source: rules.source ?? this.#settings.source,
      ...(isMoneyUnit(rules.unit) ? { currency: this.#settings.currency } : {}),
      ...(rules.note === undefined ? {} : { note: rules.note }),
      ...boundsOf(rules),
    });
    this.#known.set(field, made);
    return made;
  }

  /** Gives a field a figure that exists already, so that one value does not become two leaves. */
  know(field: string, figure: Figure): void {
    this.#known.set(field, figure);
  }

  /** A reader for a record inside this one ("cutters.0"), with keys below this one's. */
  inside(field: string, key: string, subject: string): LeafReader {
    return new LeafReader({
      ...this.#settings,
      keyPrefix: `${this.#settings.keyPrefix}/${key}`,
      path: this.path(field),
      subject: this.#settings.subject === '' ? subject : `${this.#settings.subject}, ${subject}`,
    });
  }

  /** The full path of a field, as errors name it. */
  path(field: string): string {
    return this.#settings.path === undefined ? field : `${this.#settings.path}.${field}`;
  }

  #check(field: string, value: DecimalLike | null | undefined, rules: LeafRules<Unit>): Decimal {
    const wanted = bounds(rules);
    if (value === undefined || value === null || value === '')
      throw new CostingInputError(this.path(field), 'is missing', `enter ${wanted}`);
    const number = read(value, this.path(field), wanted);
    const fits =
      (rules.above === undefined || number.gt(rules.above)) &&
      (rules.from === undefined || number.gte(rules.from)) &&
      (rules.to === undefined || number.lte(rules.to)) &&
      (rules.whole !== true || number.isInteger());
    if (!fits)
      throw new CostingInputError(this.path(field), `cannot be ${number.toString()}`, `enter ${wanted}`);
    return number;
  }
}

function read(value: DecimalLike, path: string, wanted: string): Decimal {
  try {
    return decimal(value);
  } catch (error) {
    if (error instanceof NotADecimalError)
      throw new CostingInputError(path, `is "${error.text}", which is no number`, `enter ${wanted}`);
    throw error;
  }
}

/** What the rules leave open, for who moves the leaf later. */
function boundsOf({ above, from = above, to, whole }: LeafRules<Unit>): { bounds?: LeafBounds } {
  if (from === undefined && to === undefined && whole !== true) return {};
  return {
    bounds: {
      ...(from === undefined ? {} : { least: String(from) }),
      ...(to === undefined ? {} : { most: String(to) }),
      ...(whole === true ? { isWhole: true } : {}),
    },
  };
}

function bounds(rules: LeafRules<Unit>): string {
  const limits = [
    ...(rules.above === undefined ? [] : [`above ${rules.above}`]),
    ...(rules.from === undefined ? [] : [`of at least ${rules.from}`]),
    ...(rules.to === undefined ? [] : [`of at most ${rules.to}`]),
  ];
  return [rules.whole === true ? 'a whole number' : 'a number', limits.join(' and ')].join(' ').trim();
}

function kebab(field: string): string {
  return field.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`).replaceAll('.', '/');
}
