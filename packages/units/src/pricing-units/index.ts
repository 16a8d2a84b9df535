import { boardFoot } from './board-foot.ts';
import { cubicMetre } from './cubic-metre.ts';
import { each } from './each.ts';
import { hour } from './hour.ts';
import { kilogram } from './kilogram.ts';
import { linearFoot } from './linear-foot.ts';
import { linearMetre } from './linear-metre.ts';
import { litre } from './litre.ts';
import { pack } from './pack.ts';
import { pound } from './pound.ts';
import type { PricingUnit } from './pricing-unit.ts';
import { sheet } from './sheet.ts';
import { squareFoot } from './square-foot.ts';
import { squareMetre } from './square-metre.ts';
import { thousandBoardFeet } from './thousand-board-feet.ts';
import { usGallon } from './us-gallon.ts';

export * from './pricing-unit.ts';

/** Every unit a price can be per, by its id. A new unit is a file of its own and a line here. */
export const PRICING_UNITS = {
  'board-foot': boardFoot,
  'thousand-board-feet': thousandBoardFeet,
  'cubic-metre': cubicMetre,
  'linear-foot': linearFoot,
  'linear-metre': linearMetre,
  'square-foot': squareFoot,
  'square-metre': squareMetre,
  sheet: sheet,
  each: each,
  pack: pack,
  litre: litre,
  'us-gallon': usGallon,
  kilogram: kilogram,
  pound: pound,
  hour: hour,
} as const satisfies Readonly<Record<string, PricingUnit>>;

export type PricingUnitId = keyof typeof PRICING_UNITS;
export const PRICING_UNIT_IDS = Object.keys(PRICING_UNITS) as readonly PricingUnitId[];

export function isPricingUnitId(text: string): text is PricingUnitId {
  return Object.hasOwn(PRICING_UNITS, text);
}
