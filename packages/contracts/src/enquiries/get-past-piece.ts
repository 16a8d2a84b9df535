import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { pricePolicySchema, priceStepSchema } from '../cost-sheets/cost-sheet.ts';
import { moneyText, shareText } from '../decimal-text.ts';
import { currencySchema } from '../figures.ts';
import { calendarDate, recordParams } from '../record.ts';
import { examplePastPiece, pastPieceSchema } from './worked-early-price.ts';

export const getPastPiece = defineContract({
  name: 'get-past-piece',
  method: 'GET',
  path: '/api/enquiries/past-pieces/:id',
  summary: 'Read a cost sheet as a past piece to scale from',
  description:
    'The sheet worked out at one piece, class by class, with the overall size of its design and the terms it was priced by. `id` is the cost sheet.',
  tag: 'enquiries',
  roles: 'anyone',
  params: recordParams,
  answer: z.strictObject({
    piece: pastPieceSchema,
    currency: currencySchema,
    onDate: calendarDate,
    /** Net price of one piece by that sheet. */
    priceThen: moneyText,
    terms: z.strictObject({
      discount: shareText,
      policy: pricePolicySchema,
      priceStep: priceStepSchema.exactOptional(),
    }),
  }),
  example: {
    params: { id: '0193f6a0-7c11-7000-8000-000000000020' },
    answer: {
      piece: examplePastPiece,
      currency: 'EUR',
      onDate: '2026-03-01',
      priceThen: '3950',
      terms: { discount: '0', policy: { kind: 'margin', margin: '0.25' } },
    },
  },
});
