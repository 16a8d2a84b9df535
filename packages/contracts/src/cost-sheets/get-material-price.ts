import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';
import { defineContract } from '../contract.ts';
import { currencySchema, figureId, figureTableSchema, workingQuery } from '../figures.ts';
import { priceUnitSchema } from '../price-lists/price-list.ts';
import { calendarDate, recordId, recordParams } from '../record.ts';

const usedPriceSchema = z.strictObject({
  supplier: z.strictObject({ code: z.string(), name: z.string() }),
  /** The supplier's code. */
  code: z.string(),
  unit: priceUnitSchema,
  list: z.strictObject({ id: recordId.nullable(), name: z.string(), date: calendarDate }),
  lineId: recordId,
  rule: z.string().meta({ description: 'Why this price, in words' }),
  used: figureId.meta({ description: 'The need in the unit of the price' }),
  bought: figureId.meta({ description: 'What must be bought to cover it' }),
  cost: figureId.meta({ description: "What that costs, in the workshop's currency, less recoverable tax" }),
  unitCost: figureId,
});

export const getMaterialPrice = defineContract({
  name: 'get-material-price',
  method: 'GET',
  path: '/api/materials/:id/price',
  summary: 'Read which price of a material is used on a day, and why',
  description:
    'The price a cost sheet of that day takes for the same need, by the same rule: of prices in force those of the ' +
    'preferred supplier, among these the least bill. Breaks that a newer list does not name hold on from older ones.',
  tag: 'cost-sheets',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery.extend({
    onDate: calendarDate.exactOptional().meta({ description: 'Today where it is left out' }),
    quantity: boundedDecimal({ digits: 12, places: 6, isPositive: true, example: '10' }).default('1'),
    unit: priceUnitSchema
      .exactOptional()
      .meta({ description: "Unit of the quantity; the newest price's where it is left out" }),
  }),
  answer: z.strictObject({
    onDate: calendarDate,
    currency: currencySchema,
    unit: priceUnitSchema,
    units: z.array(priceUnitSchema).meta({ description: 'Units a need of it can be stated in' }),
    needed: figureId,
    price: usedPriceSchema.nullable().meta({ description: 'Null where no price covers the need' }),
    figures: figureTableSchema,
  }),
  example: {
    params: { id: '0193f6a0-7c11-7000-8000-000000000020' },
    query: { quantity: '10', unit: 'board-foot', onDate: '2026-03-01' },
    answer: {
      onDate: '2026-03-01',
      currency: 'EUR',
      unit: 'board-foot',
      units: ['board-foot', 'square-metre'],
      needed: 'need/ASH-4/4',
      price: null,
      figures: {},
    },
  },
});
