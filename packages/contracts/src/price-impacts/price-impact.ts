import { z } from 'zod';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';
import { calendarDate, moment, recordId } from '../record.ts';

export const PRICE_IMPACT_STATUSES = ['none', 'waiting', 'working', 'done', 'failed'] as const;
export const PRICE_IMPACT_KINDS = ['sent', 'draft', 'cost-sheet'] as const;
export const PRICE_IMPACT_DECISIONS = ['revise', 'hold', 'accept', 'reopen'] as const;

/** How the impact of a price list stands. */
export const priceImpactSchema = z
  .strictObject({
    listId: recordId,
    listName: z.string(),
    supplierName: z.string(),
    validFrom: calendarDate,
    /** none: nobody has asked for it yet. */
    status: z.enum(PRICE_IMPACT_STATUSES),
    /** The day whose prices are set beside those without the list; null until it is begun. */
    onDay: calendarDate.nullable(),
    /** What the list may touch, and how much of it is worked out. */
    touched: z.number().int(),
    worked: z.number().int(),
    /** Open quotes and cost sheets whose cost it moves, and those of them that nobody has decided on. */
    moved: z.number().int(),
    undecided: z.number().int(),
    undecidedQuotes: z.number().int(),
    problem: z.string().nullable(),
  })
  .meta({ id: 'PriceImpact' });

const decisionSchema = z.strictObject({
  decision: z.enum(PRICE_IMPACT_DECISIONS),
  reason: z.string(),
  decidedBy: z.string(),
  decidedAt: moment,
});

export const priceImpactRowSchema = z
  .strictObject({
    id: recordId,
    listId: recordId,
    kind: z.enum(PRICE_IMPACT_KINDS),
    title: z.string(),
    /** The quote's number; null of a draft that was never sent and of a cost sheet. */
    number: z.string().nullable(),
    clientName: z.string().nullable(),
    quoteId: recordId.nullable(),
    revisionId: recordId.nullable(),
    costSheetId: recordId.nullable(),
    /** False where it was answered, replaced or withdrawn since: nothing is left to decide. */
    isOpen: z.boolean(),
    currency: currencySchema.nullable(),
    /** Null where it cannot be costed with the list; `problem` then says why. */
    cost: z.strictObject({ before: figureId, after: figureId, moved: figureId }).nullable(),
    /** Of a sent quote the same on both sides: the price stands as quoted. */
    netPrice: z.strictObject({ before: figureId, after: figureId }).nullable(),
    margin: z.strictObject({ before: figureId.nullable(), after: figureId.nullable() }).nullable(),
    problem: z.string().nullable(),
    /** The newest; null while nothing is decided. */
    decision: decisionSchema.nullable(),
    figures: figureTableSchema,
  })
  .meta({ id: 'PriceImpactRow' });

const node = (id: string, label: string, value: string, unit: 'money' | 'ratio' = 'money') => ({
  id,
  label,
  unit,
  currency: unit === 'money' ? ('EUR' as const) : null,
  value,
});

export const examplePriceImpact: z.input<typeof priceImpactSchema> = {
  listId: '0193f6a0-7c11-7000-8000-000000000031',
  listName: 'Spring list',
  supplierName: 'Invented Yard',
  validFrom: '2026-03-01',
  status: 'done',
  onDay: '2026-03-02',
  touched: 12,
  worked: 12,
  moved: 3,
  undecided: 2,
  undecidedQuotes: 1,
  problem: null,
};

export const examplePriceImpactRow: z.input<typeof priceImpactRowSchema> = {
  id: '0193f6a0-7c11-7000-8000-000000000041',
  listId: examplePriceImpact.listId,
  kind: 'sent',
  title: 'Ash shelves',
  number: 'Q-2026-0004',
  clientName: 'Greta (invented)',
  quoteId: '0193f6a0-7c11-7000-8000-000000000051',
  revisionId: '0193f6a0-7c11-7000-8000-000000000052',
  costSheetId: null,
  isOpen: true,
  currency: 'EUR',
  cost: { before: 'cost/before', after: 'cost/after', moved: 'cost/moved' },
  netPrice: { before: 'price/before', after: 'price/before' },
  margin: { before: 'margin/before', after: 'margin/after' },
  problem: null,
  decision: null,
  figures: {
    'cost/before': node('cost/before', 'cost as quoted', '700'),
    'cost/after': node('cost/after', 'cost with the list', '745'),
    'cost/moved': node('cost/moved', 'cost moves by', '45'),
    'price/before': node('price/before', 'net price as quoted', '1000'),
    'margin/before': node('margin/before', 'margin as quoted', '0.3', 'ratio'),
    'margin/after': node('margin/after', 'margin with the list', '0.255', 'ratio'),
  },
};
