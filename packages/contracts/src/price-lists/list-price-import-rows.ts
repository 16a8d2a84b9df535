import { PRICE_CHANGES } from '@scantling/costing';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { recordParams } from '../record.ts';
import { examplePriceImport, priceImportRowSchema } from './price-import.ts';

export const listPriceImportRows = defineContract({
  name: 'list-price-import-rows',
  method: 'GET',
  path: '/api/price-imports/:id/rows',
  summary: 'Read the rows of an import',
  description:
    'In the order of the file; `change` keeps one kind. Rows are there until it is applied or discarded.',
  tag: 'price-lists',
  roles: 'anyone',
  params: recordParams,
  query: pageQuery.extend({ change: z.enum(PRICE_CHANGES).optional() }),
  answer: pageOf(priceImportRowSchema),
  example: {
    params: { id: examplePriceImport.id },
    answer: {
      items: [
        {
          rowNumber: 3,
          change: 'unreadable',
          line: null,
          currency: 'EUR',
          before: null,
          beforeCurrency: null,
          cells: ['B-2', 'bd ft', 'on request'],
          problems: [
            {
              column: 'price',
              message: '"on request" is no number of 0 or more',
              mend: 'Write it as digits, such as 1250.50.',
            },
          ],
        },
      ],
      next: null,
    },
  },
});
