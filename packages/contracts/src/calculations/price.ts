import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { exampleTerms, pricePolicySchema, priceStepSchema } from '../cost-sheets/cost-sheet.ts';
import { moneyText, nonNegativeDecimalText, shareText } from '../decimal-text.ts';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';

const { discount, policy } = exampleTerms;

const figure = (id: string, label: string, unit: 'money' | 'ratio' | 'money/h', value: string) => ({
  id,
  label,
  unit,
  currency: unit === 'ratio' ? null : ('EUR' as const),
  value,
});

export const examplePriceBody = {
  currency: 'EUR' as const,
  costOfProduction: '700',
  materials: '200',
  labour: '300',
  machines: '50',
  ownerLabour: '300',
  ownerHours: '10',
  avoidable: '230',
  terms: { discount, policy },
};

export const price = defineContract({
  name: 'price',
  method: 'POST',
  path: '/api/calculations/price',
  summary: 'Price from cost',
  description:
    'By markup (overall or by class), margin, wanted earnings an hour, or a price entered; with what it leaves: margin on the net price, markup, what an hour of the owner earns, and the floor price at which it earns 0.',
  tag: 'calculations',
  roles: 'anyone',
  body: z.strictObject({
    currency: currencySchema,
    /** How many pieces the amounts are for; an entered price may be for one of them. */
    pieces: z.number().int().min(1).max(2000).exactOptional(),
    costOfProduction: moneyText,
    /** Direct materials, bought-in and subcontract within the cost. */
    materials: moneyText,
    labour: moneyText,
    machines: moneyText,
    ownerLabour: moneyText,
    ownerHours: nonNegativeDecimalText,
    /** Cash that stays away if the work is not done, without the owner's hours. */
    avoidable: moneyText,
    terms: z.strictObject({
      discount: shareText,
      policy: pricePolicySchema,
      priceStep: priceStepSchema.exactOptional(),
    }),
  }),
  answer: z.strictObject({
    listPrice: figureId,
    netPrice: figureId,
    profit: figureId,
    margin: figureId.nullable(),
    markup: figureId.nullable(),
    hourlyEarnings: figureId.nullable(),
    floorPrice: figureId,
    figures: figureTableSchema,
  }),
  example: {
    body: examplePriceBody,
    answer: {
      listPrice: 'list-price',
      netPrice: 'list-price',
      profit: 'profit',
      margin: 'margin',
      markup: 'markup',
      hourlyEarnings: 'hourly-earnings',
      floorPrice: 'floor-price',
      figures: {
        'list-price': figure('list-price', 'list price', 'money', '1000'),
        profit: figure('profit', 'profit', 'money', '300'),
        margin: figure('margin', 'margin on the net price', 'ratio', '0.3'),
        markup: figure('markup', 'markup on cost', 'ratio', '0.4286'),
        'hourly-earnings': figure(
          'hourly-earnings',
          'effective hourly earnings of the owner',
          'money/h',
          '60',
        ),
        'floor-price': figure('floor-price', 'floor price: you earn 0 an hour', 'money', '230'),
      },
    },
  },
});
