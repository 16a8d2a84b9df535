import { type FinishApplication, finishQuantity, type GlueSpread, glueQuantity } from '@scantling/costing';
import type { Runner } from './runner.ts';

const context = { currency: 'USD' } as const;

/** { finish } -> spreading rate, wet film, quantity in the system's unit and in litres. */
export const finishQuantityRunner: Runner = ({ finish }) => {
  const { spreadingRate, wetFilm, quantity, litres } = finishQuantity(finish as FinishApplication, context);
  return {
    spreadingRate: spreadingRate.value,
    wetFilm: wetFilm?.value,
    quantity: quantity.value,
    litres: litres.value,
  };
};

/** { glue } -> quantity and grams on a square metre. */
export const glueQuantityRunner: Runner = ({ glue }) => {
  const { quantity, gramsPerM2 } = glueQuantity(glue as GlueSpread, context);
  return { quantity: quantity.value, gramsPerM2: gramsPerM2.value };
};
