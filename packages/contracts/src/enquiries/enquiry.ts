import { ENQUIRY_OUTCOMES, ENQUIRY_SOURCES } from '@scantling/quoting';
import { z } from 'zod';
import { moneyText } from '../decimal-text.ts';
import { currencySchema } from '../figures.ts';
import { usedPictureSchema } from '../pictures/picture.ts';
import { calendarDate, givenName, moment, recordId } from '../record.ts';

export const enquiryInputSchema = z.strictObject({
  /** What it is called in lists ("Sideboard for a bay window"). */
  name: givenName,
  clientId: recordId.nullable(),
  /** Who asked, where they are no client on record. */
  askedBy: z.string().trim().max(200),
  contact: z.string().trim().max(300),
  receivedOn: calendarDate,
  source: z.enum(ENQUIRY_SOURCES),
  sourceNote: z.string().trim().max(200),
  wanted: z.string().max(5000),
  wantedBy: calendarDate.nullable(),
  /** As said, in the workshop's currency. */
  budget: moneyText.nullable(),
  outcome: z.enum(ENQUIRY_OUTCOMES),
  /** When it was won or lost. */
  outcomeOn: calendarDate.nullable(),
  outcomeReason: z.string().trim().max(1000),
});

/** The newest early price of an enquiry, in short. */
const lastEarlyPrice = z.strictObject({
  number: z.number().int(),
  givenOn: calendarDate,
  currency: currencySchema,
  low: moneyText,
  high: moneyText,
});

export const enquirySchema = enquiryInputSchema
  .extend({
    id: recordId,
    clientName: z.string().nullable(),
    /** Sum of the hours entered. */
    hoursSpent: z.string(),
    lastEarlyPrice: lastEarlyPrice.nullable(),
    /** The picture it is known by. */
    cover: usedPictureSchema.nullable(),
    isDemo: z.boolean(),
    version: z.number().int(),
    createdAt: moment,
  })
  .meta({ id: 'Enquiry' });
export type EnquiryRecord = z.output<typeof enquirySchema>;

export const exampleEnquiryInput = {
  name: 'Sideboard for a bay window',
  clientId: null,
  askedBy: 'Rosamund Teasel (invented)',
  contact: 'rosamund@teasel.example',
  receivedOn: '2026-03-02',
  source: 'word-of-mouth',
  sourceNote: '',
  wanted: 'Sideboard in ash, two metres, three doors; like the one at her sister’s.',
  wantedBy: '2026-06-01',
  budget: '4000',
  outcome: 'open',
  outcomeOn: null,
  outcomeReason: '',
} as const;
export const exampleEnquiry = {
  ...exampleEnquiryInput,
  id: '0193f6a0-7c11-7000-8000-000000000040',
  clientName: null,
  hoursSpent: '0',
  lastEarlyPrice: null,
  cover: null,
  isDemo: false,
  version: 1,
  createdAt: '2026-03-02T09:30:00.000Z',
} as const;
