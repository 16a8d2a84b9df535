import type { QuoteDraft } from '@scantling/quoting';
import { z } from 'zod';
import { moneyText } from '../decimal-text.ts';
import { currencySchema } from '../figures.ts';
import { usedPictureSchema } from '../pictures/picture.ts';
import { calendarDate, recordId } from '../record.ts';
import { singleLine } from '../single-line.ts';
import { taxCategoriesSchema } from '../workshop/tax-categories.ts';
import {
  discountSchema,
  dueTimeSchema,
  lineChoiceSchema,
  lineQuantityText,
  MOST_LINES,
  partId,
  priceModeSchema,
  scheduledPartFields,
  signedMoneyText,
} from './quote-terms.ts';

const lineFields = {
  id: partId,
  description: singleLine(200).min(1),
  /** More lines below the description, as the client reads them. */
  details: z.string().trim().max(4000),
  /** Id of one of the draft's taxes. */
  tax: z.string().min(1).max(40),
  choice: lineChoiceSchema,
  pictures: z.array(usedPictureSchema).max(12),
};
/** What the whole line costs us; null where that is not known. The client never sees it. */
const ownCost = moneyText.nullable();
/** Any number of pieces: the sheet is worked out at it. */
export const quotedPieces = z.number().int().min(1).max(2000);

export const draftLineSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('cost-sheet'),
      ...lineFields,
      costSheetId: recordId,
      pieces: quotedPieces,
    }),
    z.strictObject({
      kind: z.literal('free'),
      ...lineFields,
      quantity: lineQuantityText,
      unit: singleLine(20),
      /** Of one, in the draft's price mode; below 0 for a deduction. */
      price: signedMoneyText,
      cost: ownCost,
    }),
    z.strictObject({ kind: z.literal('delivery'), ...lineFields, price: signedMoneyText, cost: ownCost }),
  ])
  .meta({ id: 'QuoteDraftLine' });

export const draftPartSchema = z.strictObject({ ...scheduledPartFields, due: dueTimeSchema });

/** Everything that is decided about an offer before it is sent. */
export const quoteDraftSchema: z.ZodType<QuoteDraft, QuoteDraft> = z
  .strictObject({
    intro: z.string().trim().max(4000),
    currency: currencySchema,
    priceMode: priceModeSchema,
    taxes: taxCategoriesSchema,
    lines: z.array(draftLineSchema).max(MOST_LINES),
    discount: discountSchema.nullable(),
    /** Parts of the total with tax, which add up to 1; or none. */
    schedule: z.array(draftPartSchema).max(12),
    promisedOn: calendarDate.nullable(),
    /** Days it can be accepted, from the day it is sent. */
    validDays: z.number().int().min(1).max(365),
    terms: z.string().trim().max(10_000),
    pictures: z.array(usedPictureSchema).max(24),
  })
  .meta({ id: 'QuoteDraft' });

export const exampleDraft: QuoteDraft = {
  intro: 'Thank you for your visit. This is what we would make for your hall.',
  currency: 'EUR',
  priceMode: 'exclusive',
  taxes: [{ id: 'full', name: 'VAT 19 %', category: 'S', rate: '0.19', exemptionReason: '' }],
  lines: [
    {
      kind: 'cost-sheet',
      id: 'bench',
      description: 'Hall bench in oak',
      details: 'Oiled, with a drawer for gloves.',
      tax: 'full',
      choice: { kind: 'included' },
      pictures: [],
      costSheetId: '0193f6a0-7c11-7000-8000-000000000020',
      pieces: 2,
    },
    {
      kind: 'free',
      id: 'cushion',
      description: 'Cushion, wool felt',
      details: '',
      tax: 'full',
      choice: { kind: 'option' },
      pictures: [],
      quantity: '2',
      unit: 'piece',
      price: '85',
      cost: '96',
    },
    {
      kind: 'delivery',
      id: 'delivery',
      description: 'Delivery and putting up',
      details: '',
      tax: 'full',
      choice: { kind: 'included' },
      pictures: [],
      price: '120',
      cost: null,
    },
  ],
  discount: null,
  schedule: [
    { id: 'deposit', label: 'On acceptance', share: '0.5', due: 'on-acceptance' },
    { id: 'rest', label: 'On delivery', share: '0.5', due: 'on-delivery' },
  ],
  promisedOn: '2026-06-12',
  validDays: 30,
  terms: 'Wood is a natural material: colour and grain vary.',
  pictures: [],
};
