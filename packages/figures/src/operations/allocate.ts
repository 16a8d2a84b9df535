import {
  type Currency,
  isCurrency,
  MoneyInputError,
  minorUnits,
  allocate as shareOut,
} from '@scantling/money';
import { at, type Operation, type Settings } from './operation.ts';

function currencyOf({ currency = '' }: Settings): Currency {
  if (isCurrency(currency)) return currency;
  throw new MoneyInputError('currency', `is "${currency}"`, 'name a currency of ISO 4217');
}

/**
 * The share of the first input that falls to one of the weights after it (`settings.share`, from 0), in the minor unit
 * of `settings.currency`, by largest remainder: the shares of all weights add up to the first input exactly.
 */
export const allocate: Operation = {
  name: 'allocate',
  inputs: [2, Number.POSITIVE_INFINITY],
  settingsFault: ({ share = '', currency = '' }, count) => {
    if (!isCurrency(currency)) return 'names no currency of ISO 4217';
    return /^\d{1,6}$/.test(share) && Number(share) < count - 1 ? undefined : 'names no weight of its own';
  },
  evaluate: (values, settings) =>
    at(shareOut(at(values, 0), values.slice(1), currencyOf(settings)), Number(settings.share)),
  phrase: ([total = '', ...weights], settings) =>
    `the share of ${total} that falls to ${at(weights, Number(settings.share))} among ${weights.join(' and ')}, so that all shares add up`,
  formula: ([total = '', ...weights], settings) => {
    const own = Number(settings.share);
    const unit = `(1/10^${minorUnits(currencyOf(settings))})`;
    // ROUND guards the binary spreadsheet: a third of 0.30 is 10 cents there too, not 9.9999999.
    const exact = weights.map(
      (weight) => `ROUND(ABS(${total})/${unit}*${weight}/SUM(${weights.join(',')}),9)`,
    );
    const rest = exact.map((one) => `ROUND(${one}-INT(${one}),9)`);
    const whole = exact.map((one) => `INT(${one})`).join('+');
    const before = rest.flatMap((one, index) => {
      if (index === own) return [];
      return [`IF(${one}${index < own ? '>=' : '>'}${at(rest, own)},1,0)`];
    });
    const left = `ROUND(ABS(${total})/${unit}-(${whole}),0)`;
    return `(SIGN(${total})*${unit}*(INT(${at(exact, own)})+IF(${['0', ...before].join('+')}<${left},1,0)))`;
  },
};
