import { roundHalfAway } from '@scantling/decimals';
import {
  annuityFutureValueFactor,
  annuityPresentValueFactor,
  capitalRecoveryFactor,
  futureValue,
  isCurrency,
  marginFromMarkup,
  markupFromMargin,
  minorUnits,
  priceByMarkup,
  roundToMinorUnit,
} from '@scantling/money';
import { z } from 'zod';
import { number, numbers, runner } from '../checked-inputs.ts';

export const roundRunner = runner({ values: numbers, currency: z.string() }, ({ values, currency }) => {
  if (!isCurrency(currency)) throw new Error(`no currency "${currency}"`);
  return {
    halfAway: values.map((value) => roundToMinorUnit(value, currency)),
    halfEven: values.map((value) => roundToMinorUnit(value, currency, 'half-even')),
  };
});

export const minorUnitsRunner = runner({ codes: z.array(z.string()) }, ({ codes }) => ({
  places: codes.map((code) => (isCurrency(code) ? minorUnits(code) : undefined)),
}));

export const markupRunner = runner({ markups: numbers }, ({ markups }) => {
  const margins = markups.map(marginFromMarkup);
  return { margins, markups: margins.map(markupFromMargin) };
});

export const priceByMarkupRunner = runner({ costs: numbers, markup: number }, ({ costs, markup }) => ({
  prices: costs.map((cost) => priceByMarkup(cost, markup)),
}));

const term = { rate: number, periods: number };

export const capitalRecoveryRunner = runner({ cases: z.array(z.strictObject(term)) }, ({ cases }) => ({
  factors: cases.map(({ rate, periods }) => capitalRecoveryFactor(rate, periods)),
}));

export const presentValueRunner = runner(
  { cases: z.array(z.strictObject({ ...term, payment: number })), factorPlaces: number },
  ({ cases, factorPlaces }) => {
    const exact = cases.map((one) => annuityPresentValueFactor(one.rate, one.periods));
    const factors = exact.map((factor) => roundHalfAway(factor, Number(factorPlaces)));
    return {
      factors,
      presentValues: factors.map((factor, at) => factor.times(cases[at]?.payment ?? 0)),
      exactPresentValues: exact.map((factor, at) => factor.times(cases[at]?.payment ?? 0)),
    };
  },
);

export const futureValueRunner = runner(
  { lumps: z.array(z.strictObject({ ...term, sum: number })), annuity: z.strictObject(term) },
  ({ lumps, annuity }) => ({
    futureValues: lumps.map(({ sum, rate, periods }) => futureValue(sum, rate, periods)),
    annuityFactor: annuityFutureValueFactor(annuity.rate, annuity.periods),
  }),
);
