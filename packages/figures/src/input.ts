import { type DecimalLike, decimal } from '@scantling/decimals';
import type { Currency } from '@scantling/money';
import { isMoneyUnit, type Unit } from '@scantling/units';
import type { Figure, LeafBounds } from './figure.ts';
import { definition, type Source } from './source.ts';

interface InputOptions<U extends Unit> {
  /** Names the leaf for good; two leaves with one key must be the same value. */
  key: string;
  label: string;
  unit: U;
  value: DecimalLike;
  source: Source;
  /** Needed exactly when the unit is money. */
  currency?: Currency;
  note?: string;
  bounds?: LeafBounds;
}

/** Thrown when money comes without a currency, or another unit with one. */
export class CurrencyNeededError extends Error {
  readonly code = 'currency-needed';
  constructor(readonly key: string) {
    super(`${key}: money needs a currency, and only money may have one`);
    this.name = 'CurrencyNeededError';
  }
}

/** A leaf. @throws CurrencyNeededError, NotADecimalError */
export function input<U extends Unit>(options: InputOptions<U>): Figure<U> {
  if (isMoneyUnit(options.unit) !== (options.currency !== undefined))
    throw new CurrencyNeededError(options.key);
  return {
    label: options.label,
    unit: options.unit,
    currency: options.currency ?? null,
    value: decimal(options.value),
    how: {
      kind: 'input',
      key: options.key,
      source: options.source,
      ...(options.bounds === undefined ? {} : { bounds: options.bounds }),
    },
    ...(options.note === undefined ? {} : { note: options.note }),
  };
}

const constants = new Map<string, Figure>();

/** A value that holds by definition, shared by everything that uses it ("25.4 mm in an inch"). */
export function constant<U extends Unit>(label: string, unit: U, value: DecimalLike): Figure<U> {
  const key = `constant/${label}/${unit}/${String(value)}`;
  const known = constants.get(key);
  if (known) return known as Figure<U>;
  const made = input({ key, label, unit, value, source: definition(label) });
  constants.set(key, made);
  return made;
}
