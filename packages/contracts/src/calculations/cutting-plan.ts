import { CUTTING_KINDS, CUTTING_OBJECTIVES } from '@scantling/cutting';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { nonNegativeDecimalText } from '../decimal-text.ts';

/** A decimal as text or as a JSON number, which is taken as it is written. */
const amount = z.union([nonNegativeDecimalText, z.number().min(0)]);
const id = z.string().trim().min(1).max(120);
const count = z.int().min(0).max(20_000);

const bodySchema = z.strictObject({
  kind: z.enum(CUTTING_KINDS),
  /** `max-value`: the most valuable choice of parts from limited stock; `quantity` is then an upper limit. */
  objective: z.enum(CUTTING_OBJECTIVES).default('min-cost'),
  /** Width of a cut, between neighbours only. */
  kerf: amount,
  /** Off every edge of every stock piece (both ends of a stick), the cut included. */
  trim: amount.exactOptional(),
  /** Most directions of cuts after one another on a sheet, trimming apart. */
  stages: z.int().min(1).max(20).exactOptional(),
  firstCut: z.enum(['crosscut', 'rip']).exactOptional(),
  stock: z
    .array(
      z.strictObject({
        id,
        length: amount,
        width: amount.exactOptional(),
        cost: amount,
        available: count.exactOptional(),
        offcut: z.boolean().exactOptional(),
        trim: amount.exactOptional(),
      }),
    )
    .min(1)
    .max(200),
  parts: z
    .array(
      z.strictObject({
        id,
        length: amount,
        width: amount.exactOptional(),
        quantity: count,
        rotatable: z.boolean().exactOptional(),
        value: amount.exactOptional(),
      }),
    )
    .min(1)
    .max(1000),
  preferences: z
    .strictObject({
      /** What one more kind of stock may cost to be avoided. */
      pricePerKindOfStock: amount.exactOptional(),
      /** Offcuts of at least this size are worth so much per unit of length, of area with sheets. */
      usableOffcuts: z
        .strictObject({ leastLength: amount, leastWidth: amount.exactOptional(), worth: amount })
        .exactOptional(),
    })
    .exactOptional(),
  /** How long the search may take; the same limit does the same work. */
  timeLimitMs: z.int().min(100).max(120_000).default(3000),
  schema: z.literal(1).exactOptional(),
  name: z.string().max(200).exactOptional(),
  /** Whatever all lengths are in. */
  units: z.string().max(40).exactOptional(),
  bestKnown: z.unknown().exactOptional(),
  source: z.unknown().exactOptional(),
});

const place = z.string();

const answerSchema = z.strictObject({
  /** `optimal` is proven. */
  status: z.enum(['optimal', 'feasible']),
  /** Of the stock used. */
  cost: z.string(),
  /** Of the parts cut; with `max-value` only. */
  value: z.string().exactOptional(),
  /** No plan costs less (with `max-value`: is worth more). */
  bound: z.string(),
  /** Cost over bound less 1 (bound over value); null where only the bound is 0. */
  gap: z.string().nullable(),
  /** With preferences: cost + price of kinds - worth of offcuts, which bound and gap are then of. */
  weighed: z.string().exactOptional(),
  /** `work`: the same request gives the same plan; `clock`: the time was up before the work was done. */
  endedBy: z.enum(['proof', 'work', 'clock']),
  elapsedMs: z.int(),
  layouts: z
    .array(
      z.strictObject({
        stock: z.string(),
        count: z.int().min(1),
        /** Lower-left corners on the whole stock piece, x along its length. */
        cuts: z
          .array(
            z.strictObject({
              part: z.string(),
              x: place,
              y: place.exactOptional(),
              turned: z.boolean().exactOptional(),
            }),
          )
          .readonly(),
        offcuts: z
          .array(
            z.strictObject({
              x: place,
              y: place.exactOptional(),
              length: place,
              width: place.exactOptional(),
            }),
          )
          .readonly(),
      }),
    )
    .readonly(),
});

export const cuttingPlan = defineContract({
  name: 'cutting-plan',
  method: 'POST',
  path: '/api/calculations/cutting-plan',
  summary: 'What to buy and how to cut it',
  description:
    'Boards, sheets or sticks at the least cost, with a layout for each that cuts from edge to edge can make, and a bound that no plan goes below. Lengths are decimals with at most six places in any one unit, as numbers or as text; x runs along the stock, the way of the grain. Every layout is checked before it is answered. The search ends when the client goes.',
  tag: 'calculations',
  roles: 'anyone',
  body: bodySchema,
  answer: answerSchema,
  example: {
    body: {
      kind: '1d',
      kerf: 3,
      stock: [
        { id: 'ash-2400', length: 2400, cost: '17.20' },
        { id: 'rest', length: 910, cost: 0, available: 1, offcut: true },
      ],
      parts: [
        { id: 'leg', length: 720, quantity: 4 },
        { id: 'rail', length: '412.5', quantity: 2 },
      ],
    },
    answer: {
      status: 'optimal',
      cost: '34.4',
      bound: '34.4',
      gap: '0',
      endedBy: 'proof',
      elapsedMs: 12,
      layouts: [
        {
          stock: 'ash-2400',
          count: 1,
          cuts: [
            { part: 'leg', x: '0' },
            { part: 'leg', x: '723' },
            { part: 'leg', x: '1446' },
          ],
          offcuts: [{ x: '2169', length: '231' }],
        },
        {
          stock: 'ash-2400',
          count: 1,
          cuts: [
            { part: 'leg', x: '0' },
            { part: 'rail', x: '723' },
            { part: 'rail', x: '1138.5' },
          ],
          offcuts: [{ x: '1554', length: '846' }],
        },
      ],
    },
  },
});
