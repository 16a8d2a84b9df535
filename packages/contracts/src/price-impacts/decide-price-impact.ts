import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordId, recordParams } from '../record.ts';
import { MAKERS } from '../roles.ts';
import { examplePriceImpactRow, PRICE_IMPACT_DECISIONS, priceImpactRowSchema } from './price-impact.ts';

export const decidePriceImpact = defineContract({
  name: 'decide-price-impact',
  method: 'POST',
  path: '/api/price-impact-rows/:id/decisions',
  summary: 'Decide what to do about a quote or cost sheet whose prices moved',
  description:
    'revise: makes a new revision of a sent quote, or answers the one that waits. hold: the price quoted stands, with the ' +
    'reason. accept: nothing to do. reopen: takes the decision back. Each is kept with who decided and when.',
  tag: 'price-impacts',
  roles: MAKERS,
  params: recordParams,
  body: z.strictObject({
    decision: z.enum(PRICE_IMPACT_DECISIONS),
    reason: z.string().trim().max(500).default(''),
  }),
  answer: z.strictObject({
    row: priceImpactRowSchema,
    /** The draft that `revise` made or found. */
    draftId: recordId.nullable(),
  }),
  idempotent: true,
  example: {
    params: { id: examplePriceImpactRow.id },
    body: { decision: 'hold', reason: 'Promised by hand.' },
    answer: {
      row: {
        ...examplePriceImpactRow,
        decision: {
          decision: 'hold',
          reason: 'Promised by hand.',
          decidedBy: 'Odalie (invented)',
          decidedAt: '2026-03-02T10:00:00.000Z',
        },
      },
      draftId: null,
    },
  },
});
