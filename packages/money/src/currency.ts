/** Minor units (decimal places) of ISO 4217 currencies; list one as carried by datasets/currency-codes, 2026. */
const MINOR_UNITS = {
  USD: 2,
  EUR: 2,
  GBP: 2,
  CAD: 2,
  AUD: 2,
  NZD: 2,
  CHF: 2,
  SEK: 2,
  NOK: 2,
  DKK: 2,
  PLN: 2,
  CZK: 2,
  HUF: 2,
  RON: 2,
  BGN: 2,
  TRY: 2,
  ZAR: 2,
  INR: 2,
  CNY: 2,
  IDR: 2,
  MXN: 2,
  BRL: 2,
  ILS: 2,
  SGD: 2,
  HKD: 2,
  THB: 2,
  MYR: 2,
  PHP: 2,
  AED: 2,
  SAR: 2,
  MGA: 2,
  MRU: 2,
  UYU: 2,
  JPY: 0,
  KRW: 0,
  CLP: 0,
  ISK: 0,
  VND: 0,
  BHD: 3,
  IQD: 3,
  JOD: 3,
  KWD: 3,
  LYD: 3,
  OMR: 3,
  TND: 3,
  CLF: 4,
  UYW: 4,
} as const;

export type Currency = keyof typeof MINOR_UNITS;
export const CURRENCIES = Object.keys(MINOR_UNITS) as readonly Currency[];

/** Decimal places of the currency's minor unit (ISO 4217). */
export function minorUnits(currency: Currency): number {
  return MINOR_UNITS[currency];
}

export function isCurrency(code: string): code is Currency {
  return Object.hasOwn(MINOR_UNITS, code);
}

/** Thrown when amounts of two currencies meet in one sum; convert one with a dated exchange rate first. */
export class CurrencyMismatchError extends Error {
  readonly code = 'currency-mismatch';
  constructor(
    readonly left: Currency,
    readonly right: Currency,
    readonly where: string,
  ) {
    super(`${where}: ${left} and ${right} cannot be combined without an exchange rate`);
    this.name = 'CurrencyMismatchError';
  }
}
