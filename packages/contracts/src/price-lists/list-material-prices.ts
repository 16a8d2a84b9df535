import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { calendarDate, recordId, recordParams } from '../record.ts';
import { exampleLine, examplePriceList, priceLineSchema, priceListSchema } from './price-list.ts';

/** A price of a material on a dated list, for a history. */
export const materialPriceSchema = z
  .strictObject({
    line: priceLineSchema,
    list: priceListSchema.pick({
      id: true,
      name: true,
      validFrom: true,
      validTo: true,
      currency: true,
      taxIncluded: true,
    }),
    supplier: z.strictObject({ id: recordId, code: z.string(), name: z.string() }),
    endedFrom: calendarDate
      .nullable()
      .meta({ description: 'Day of the next complete list of the supplier that does not name it' }),
  })
  .meta({ id: 'MaterialPrice' });

export const listMaterialPrices = defineContract({
  name: 'list-material-prices',
  method: 'GET',
  path: '/api/materials/:id/prices',
  summary: 'Read the prices of a material through time',
  description: 'Every price any supplier ever asked for it, newest list first; nothing is ever removed.',
  tag: 'price-lists',
  roles: 'anyone',
  params: recordParams,
  query: pageQuery,
  answer: pageOf(materialPriceSchema),
  example: {
    params: { id: '0193f6a0-7c11-7000-8000-000000000020' },
    answer: {
      items: [
        {
          line: exampleLine,
          list: {
            id: examplePriceList.id,
            name: examplePriceList.name,
            validFrom: examplePriceList.validFrom,
            validTo: null,
            currency: 'EUR',
            taxIncluded: false,
          },
          supplier: { id: examplePriceList.supplierId, code: 'YARD', name: examplePriceList.supplierName },
          endedFrom: null,
        },
      ],
      next: null,
    },
  },
});
