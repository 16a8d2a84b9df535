import { DESIGN_SECTIONS } from '@scantling/costing';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { recordParams } from '../record.ts';
import { exampleDesign } from './design.ts';

const revisionNumber = z.coerce.number().int().min(1).max(1_000_000);

export const designChangeSchema = z
  .strictObject({
    section: z.enum(DESIGN_SECTIONS),
    id: z.string(),
    name: z.string(),
    kind: z.enum(['added', 'removed', 'changed']),
    fields: z.array(
      z.strictObject({
        field: z.string(),
        /** As text, lengths in millimetres, a formula behind its "="; null where it is not given. */
        before: z.string().nullable(),
        after: z.string().nullable(),
      }),
    ),
  })
  .meta({ id: 'DesignChange' });

export const compareDesignRevisions = defineContract({
  name: 'compare-design-revisions',
  method: 'GET',
  path: '/api/designs/:id/changes',
  summary: 'Compare two revisions of a design',
  description: 'Rows that came, went or changed from one to the other, field by field.',
  tag: 'designs',
  roles: 'anyone',
  params: recordParams,
  query: z.strictObject({ from: revisionNumber, to: revisionNumber }),
  answer: z.strictObject({
    from: z.number().int(),
    to: z.number().int(),
    changes: z.array(designChangeSchema),
  }),
  example: {
    params: { id: exampleDesign.id },
    query: { from: 1, to: 2 },
    answer: {
      from: 1,
      to: 2,
      changes: [
        {
          section: 'parts',
          id: 'seat',
          name: 'Seat',
          kind: 'changed',
          fields: [{ field: 'width', before: '300', after: '320' }],
        },
      ],
    },
  },
});
