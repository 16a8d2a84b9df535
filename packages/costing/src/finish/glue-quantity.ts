import type { DecimalLike } from '@scantling/decimals';
import { constant, derive, entered, type Figure } from '@scantling/figures';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';

/** Glue spread on joints. */
export interface GlueSpread {
  readonly id: string;
  readonly name: string;
  /** Area of all glue lines, in ft2 or m2. */
  readonly area: DecimalLike;
  /** Pounds on 1000 ft2, or grams on a square metre, of one glue line. */
  readonly spread:
    | { readonly unit: 'lb per 1000 ft2'; readonly value: DecimalLike }
    | { readonly unit: 'g per m2'; readonly value: DecimalLike };
}

export interface GlueQuantity {
  /** The spread in the unit the quantity comes out in. */
  readonly spread: Figure<'lb/ft2' | 'kg/m2'>;
  readonly quantity: Figure<'lb' | 'kg'>;
  /** The spread in grams on a square metre. */
  readonly gramsPerM2: Figure<'ratio'>;
}

const A_POUND_ON_1000_FT2 = constant('a pound on 1000 square feet', 'lb/ft2', '0.001');
const A_GRAM_ON_A_M2 = constant('a gram on a square metre', 'kg/m2', '0.001');
const KG_IN_A_POUND = constant('kg in a pound', 'kg/lb', '0.45359237');
const M2_IN_A_SQUARE_FOOT = constant('m2 in a square foot', 'm2/ft2', '0.09290304');
const A_THOUSAND = constant('g in a kg', 'ratio', 1000);

/** Area of the glue lines x spread. @throws CostingInputError naming the field */
export function glueQuantity(glue: GlueSpread, context: CostingContext): GlueQuantity {
  const reader = new LeafReader({
    keyPrefix: `${context.keyPrefix ?? 'glue'}/${glue.id}`,
    currency: context.currency,
    source: context.source ?? entered(),
    subject: glue.name,
  });
  const isUs = glue.spread.unit === 'lb per 1000 ft2';
  const area = reader.read('area', glue.area, {
    label: 'area of glue lines',
    unit: isUs ? 'ft2' : 'm2',
    from: 0,
  });
  const printed = reader.read('spread', glue.spread.value, {
    label: isUs ? 'pounds on 1000 square feet' : 'grams on a square metre',
    unit: 'ratio',
    above: 0,
  });
  const one = isUs ? A_POUND_ON_1000_FT2 : A_GRAM_ON_A_M2;
  const spread = derive(`${glue.name}: spread`, one.unit, 'product', [printed, one]);
  const grams = isUs
    ? derive('spread in kg a square metre', 'kg/m2', 'quotient', [
        derive('spread in kg a square foot', 'kg/ft2', 'product', [spread, KG_IN_A_POUND]),
        M2_IN_A_SQUARE_FOOT,
      ])
    : spread;
  return {
    spread,
    quantity: derive(`${glue.name}: needed`, isUs ? 'lb' : 'kg', 'product', [area, spread]),
    gramsPerM2: derive(`${glue.name}: grams on a square metre`, 'ratio', 'product', [grams, A_THOUSAND]),
  };
}
