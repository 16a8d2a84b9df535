import { type ClientDocument, clientDocument, draftTotals, type StatedTotals } from '@scantling/quoting';
import { z } from 'zod';
import { currencySchema } from '../figures.ts';
import { usedPictureSchema } from '../pictures/picture.ts';
import { calendarDate } from '../record.ts';
import { draftPartSchema, exampleDraft } from './quote-draft.ts';
import { discountSchema, lineChoiceSchema, priceModeSchema, quoteKindSchema } from './quote-terms.ts';

const amount = z.string().meta({ description: 'A decimal number as text', examples: ['1249.9'] });

/** Totals as decimal text, for one set of choices. */
export const statedTotalsSchema: z.ZodType<StatedTotals, StatedTotals> = z
  .strictObject({
    sumOfLines: amount,
    discount: amount,
    taxes: z.array(z.strictObject({ id: z.string(), net: amount, tax: amount })),
    net: amount,
    tax: amount,
    total: amount,
    schedule: z.array(z.strictObject({ id: z.string(), amount })),
  })
  .meta({ id: 'StatedTotals' });

/** The workshop as the letterhead said it when a paper was made. */
export const documentWorkshopSchema = z.strictObject({
  name: z.string(),
  addressLines: z.array(z.string()),
  email: z.string().nullable(),
  phone: z.string(),
  website: z.string(),
  taxNumber: z.string(),
  registration: z.string(),
  bankLines: z.array(z.string()),
  footer: z.string(),
  logo: usedPictureSchema.nullable(),
  paperSize: z.enum(['a4', 'letter']),
});

/** What the client is offered, whole and frozen. It holds no cost and nothing else of ours. */
export const clientDocumentSchema: z.ZodType<ClientDocument, ClientDocument> = z
  .strictObject({
    kind: quoteKindSchema,
    number: z.string(),
    revision: z.number().int(),
    title: z.string(),
    sentOn: calendarDate,
    /** The last day it can be accepted. */
    validUntil: calendarDate,
    workshop: documentWorkshopSchema,
    client: z.strictObject({ name: z.string(), addressLines: z.array(z.string()) }),
    /** The accepted offer that an addition comes on top of. */
    addsTo: z.strictObject({ number: z.string(), acceptedOn: calendarDate }).nullable(),
    intro: z.string(),
    currency: currencySchema,
    priceMode: priceModeSchema,
    taxes: z.array(
      z.strictObject({
        id: z.string(),
        name: z.string(),
        category: z.string(),
        rate: amount,
        exemptionReason: z.string(),
      }),
    ),
    lines: z.array(
      z.strictObject({
        id: z.string(),
        kind: z.enum(['cost-sheet', 'free', 'delivery']),
        description: z.string(),
        details: z.string(),
        quantity: amount,
        unit: z.string(),
        /** For `priceBase` of them; with tax where the document's prices hold it. */
        price: amount,
        priceBase: amount,
        amount,
        tax: z.string(),
        choice: lineChoiceSchema,
        pictures: z.array(usedPictureSchema),
      }),
    ),
    discount: discountSchema.nullable(),
    schedule: z.array(draftPartSchema),
    promisedOn: calendarDate.nullable(),
    terms: z.string(),
    pictures: z.array(usedPictureSchema),
    /** With nothing chosen. */
    totals: statedTotalsSchema,
  })
  .meta({ id: 'ClientDocument' });

export const exampleDocument: ClientDocument = clientDocument(
  exampleDraft,
  draftTotals(
    exampleDraft,
    new Map([
      [
        'bench',
        {
          costSheetId: '0193f6a0-7c11-7000-8000-000000000020',
          title: 'Hall bench for the Pemberwick house',
          netPrice: '2620',
        },
      ],
    ]),
  ),
  {
    kind: 'quote',
    number: 'Q-2026-0007',
    revision: 1,
    title: 'Two benches for the hall',
    sentOn: '2026-03-01',
    validUntil: '2026-03-31',
    workshop: {
      name: 'Alderbrook Joinery (invented)',
      addressLines: ['4 Mill Lane', 'Invented Town'],
      email: 'shop@alderbrook.example',
      phone: '',
      website: '',
      taxNumber: '',
      registration: '',
      bankLines: [],
      footer: '',
      logo: null,
      paperSize: 'a4',
    },
    client: { name: 'Greta Lindqvist (invented)', addressLines: ['4 Mill Lane', 'Invented Town'] },
    addsTo: null,
  },
);
