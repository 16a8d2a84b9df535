import { type Figure, FigureTableBuilder } from '@scantling/figures';
import {
  EARLY_PRICE_CLASSES,
  type EarlyPrice,
  type EarlyPriceClass,
  type EarlyPriceInput,
  earlyPrice,
  SCALE_BASES,
} from '@scantling/quoting';
import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';
import type { WorkingOptions } from '../calculations/calculation.ts';
import { pricePolicySchema, priceStepSchema } from '../cost-sheets/cost-sheet.ts';
import { moneyText, shareText } from '../decimal-text.ts';
import { currencySchema, figureId, figureTableSchema, sourceSchema } from '../figures.ts';
import { givenName, recordId } from '../record.ts';

const sizeMm = boundedDecimal({ digits: 6, places: 6, isPositive: true, example: '1600' });
const pieceCount = boundedDecimal({ digits: 6, places: 6, isPositive: true, example: '6' });
const askedHours = boundedDecimal({ digits: 6, places: 6, isPositive: true, example: '38' });
const pastHours = boundedDecimal({ digits: 6, places: 18, example: '38' });
const exponent = boundedDecimal({ digits: 1, places: 6, example: '0.7' });
const factor = boundedDecimal({ digits: 4, places: 6, isPositive: true, example: '1.1' });
const bandAbove = boundedDecimal({ digits: 4, places: 6, example: '0.3' });

/** Overall sizes in mm. */
export const overallSizeSchema = z
  .strictObject({ length: sizeMm, width: sizeMm, height: sizeMm })
  .meta({ id: 'OverallSize' });

/** A piece that was costed, at one piece. */
export const pastPieceSchema = z
  .strictObject({
    id: recordId,
    name: givenName,
    size: overallSizeSchema.exactOptional(),
    count: pieceCount.exactOptional(),
    hours: pastHours,
    /** Direct materials and consumables. */
    materials: moneyText,
    /** Hardware, bought-in components and subcontract. */
    boughtIn: moneyText,
    labour: moneyText,
    machines: moneyText,
    /** Workshop and administration overhead. */
    overhead: moneyText,
    /** Freight and contingency. */
    other: moneyText,
    /** All the owner's hours, quoting, buying and delivery included. */
    ownerHours: pastHours,
    ownerLabour: moneyText,
    source: sourceSchema.exactOptional(),
  })
  .meta({ id: 'PastPiece' });

const scaleRule = z.strictObject({ basis: z.enum(SCALE_BASES), exponent });

/** The whole input of an early price; what is left out takes the defaults of `defaultScaling` and `DEFAULT_BAND`. */
export const earlyPriceInputSchema: z.ZodType<EarlyPriceInput, EarlyPriceInput> = z
  .strictObject({
    currency: currencySchema,
    pieces: z.array(pastPieceSchema).min(1).max(8),
    asked: z.strictObject({
      size: overallSizeSchema.exactOptional(),
      count: pieceCount.exactOptional(),
      hours: askedHours.exactOptional(),
    }),
    scaling: z
      .strictObject(
        Object.fromEntries(EARLY_PRICE_CLASSES.map((name) => [name, scaleRule.exactOptional()])) as Record<
          EarlyPriceClass,
          z.ZodExactOptional<typeof scaleRule>
        >,
      )
      .exactOptional(),
    adjustment: z.strictObject({ factor, reason: z.string().trim().min(1).max(300) }).exactOptional(),
    band: z.strictObject({ below: shareText, above: bandAbove }).exactOptional(),
    terms: z.strictObject({
      discount: shareText,
      policy: pricePolicySchema,
      priceStep: priceStepSchema.exactOptional(),
    }),
  })
  .meta({ id: 'EarlyPriceInput' });

const estimateSchema = z.strictObject({ price: figureId, cost: figureId, hours: figureId });
const byClass = z.strictObject(
  Object.fromEntries(EARLY_PRICE_CLASSES.map((name) => [name, figureId])) as Record<
    EarlyPriceClass,
    typeof figureId
  >,
);

export const workedEarlyPriceSchema = z
  .strictObject({
    /** Marks it for good: a range, not an offer, and never the price of a cost sheet. */
    standing: z.literal('before-bill-of-materials'),
    currency: currencySchema,
    spread: z.enum(['past-pieces', 'band']),
    low: estimateSchema,
    likely: estimateSchema,
    high: estimateSchema,
    pieces: z.array(
      z.strictObject({
        id: recordId,
        name: z.string(),
        past: byClass,
        factors: byClass,
        scaled: byClass,
        cost: figureId,
        hours: figureId,
        price: figureId,
      }),
    ),
    figures: figureTableSchema,
  })
  .meta({ id: 'WorkedEarlyPrice' });
export type WorkedEarlyPrice = z.output<typeof workedEarlyPriceSchema>;

/** The answer; API and live preview make it by this one function. @throws CostingInputError */
export function workOutEarlyPrice(input: EarlyPriceInput, options: WorkingOptions): WorkedEarlyPrice {
  const worked = earlyPrice(input);
  const table = new FigureTableBuilder(options);
  const estimate = (name: 'low' | 'likely' | 'high') => ({
    price: table.add(`${name}/price`, worked[name].price),
    cost: table.add(`${name}/cost`, worked[name].cost),
    hours: table.add(`${name}/hours`, worked[name].hours),
  });
  const { standing, spread } = worked;
  return {
    standing,
    currency: input.currency,
    spread,
    low: estimate('low'),
    likely: estimate('likely'),
    high: estimate('high'),
    pieces: worked.pieces.map((piece) => toPiece(piece, table)),
    figures: table.table(),
  };
}

function toPiece({ scaled, price }: EarlyPrice['pieces'][number], table: FigureTableBuilder) {
  const at = `piece/${scaled.id}`;
  const classes = (part: string, figures: Readonly<Record<EarlyPriceClass, Figure>>) =>
    Object.fromEntries(
      EARLY_PRICE_CLASSES.map((name) => [name, table.add(`${at}/${part}/${name}`, figures[name])]),
    ) as Record<EarlyPriceClass, string>;
  return {
    id: scaled.id,
    name: scaled.name,
    past: classes('past', scaled.past),
    factors: classes('factor', scaled.factors),
    scaled: classes('scaled', scaled.classes),
    cost: table.add(`${at}/cost`, scaled.cost),
    hours: table.add(`${at}/hours`, scaled.hours),
    price: table.add(`${at}/price`, price),
  };
}

/** Invented. */
export const examplePastPiece = {
  id: '0193f6a0-7c11-7000-8000-000000000020',
  name: 'Sideboard in ash',
  size: { length: '1600', width: '450', height: '800' },
  hours: '38',
  materials: '620',
  boughtIn: '140',
  labour: '1520',
  machines: '110',
  overhead: '430',
  other: '120',
  ownerHours: '42',
  ownerLabour: '1520',
} as const;
export const exampleEarlyPriceInput: EarlyPriceInput = {
  currency: 'EUR',
  pieces: [examplePastPiece],
  asked: { size: { length: '2000', width: '450', height: '800' } },
  terms: {
    discount: '0',
    policy: { kind: 'margin', margin: '0.25' },
    priceStep: { to: '50', direction: 'up' },
  },
};
