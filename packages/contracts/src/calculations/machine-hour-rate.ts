import { RATE_BASES, machineHourRate as rateOf } from '@scantling/costing';
import { entered, FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText } from '../decimal-text.ts';
import { currencySchema, figureTableSchema } from '../figures.ts';
import { machineHourRateSchema, toWorkedRate } from '../tools/worked-machine-hour-rate.ts';
import { calculationQuery, namingFields, type WorkingOptions } from './calculation.ts';
import { calculationToolSchema } from './calculation-tool.ts';

const bodySchema = z.strictObject({
  currency: currencySchema,
  tool: calculationToolSchema,
  basis: z.enum(RATE_BASES),
  averageInvestment: z.enum(['forestry', 'simple']).default('forestry'),
  /** The year of the schedule the book basis is for; needed unless it is written off in a straight line. */
  namedYear: z.number().int().exactOptional(),
  floorCostPerM2: decimalText.default('0'),
  electricityPerKwh: decimalText.default('0'),
});

const answerSchema = machineHourRateSchema.extend({ figures: figureTableSchema });

const OWN_FIELDS: readonly string[] = ['floorCostPerM2', 'electricityPerKwh', 'namedYear'];

/** @throws CostingInputError */
export function workOutMachineHourRate(
  body: z.output<typeof bodySchema>,
  options: WorkingOptions,
): z.output<typeof answerSchema> {
  const { currency, tool, basis, floorCostPerM2, electricityPerKwh, ...rest } = body;
  const rate = namingFields(
    (field) => (OWN_FIELDS.includes(field) ? field : `tool.${field}`),
    () =>
      rateOf(tool, basis, {
        ...rest,
        context: { currency, source: entered() },
        shop: { floorCostPerM2, electricityPerKwh },
      }),
  );
  const table = new FigureTableBuilder(options);
  return { ...toWorkedRate(rate, table, ''), figures: table.table() };
}

const body: z.input<typeof bodySchema> = {
  currency: 'EUR',
  basis: 'replacement',
  electricityPerKwh: '0.3',
  tool: {
    id: 'saw',
    name: 'Panel saw',
    acquisition: 'new',
    bookCost: '6000',
    replacementCost: '6600',
    salvage: '600',
    lifeYears: '10',
    hoursPerYear: '300',
    depreciation: { name: 'straight-line' },
    interestRate: '0.04',
    insuranceTaxRate: '0.02',
    floorAreaM2: '0',
    ratedKw: '3',
    load: '0.6',
    maintenanceShare: '0.5',
    maintenanceByHours: '1',
    cutters: [],
    attached: [],
  },
};

export const machineHourRate = defineContract({
  name: 'machine-hour-rate',
  method: 'POST',
  path: '/api/calculations/machine-hour-rate',
  summary: 'What an hour of a machine costs',
  description:
    "Owning costs over the machine's own hours and running costs by the hour, on the book, replacement or marginal basis.",
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: bodySchema,
  answer: answerSchema,
  example: { body, answer: workOutMachineHourRate(bodySchema.parse(body), { withDerivations: true }) },
});
