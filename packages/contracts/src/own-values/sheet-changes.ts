import { z } from 'zod';
import { costSheetSchema, exampleCostSheet } from '../cost-sheets/cost-sheet.ts';
import { nonNegativeDecimalText } from '../decimal-text.ts';
import { currencySchema } from '../figures.ts';
import { recordId } from '../record.ts';
import { MOST_CHANGES } from '../scenarios/scenario.ts';
import { SHEET_RESULTS, workedAmount } from '../scenarios/sheet-results.ts';
import { leafKey } from './own-value.ts';

export const CHANGE_REACHES = ['here', 'everywhere'] as const;
/** here: on this cost sheet only. everywhere: in the record the leaf comes from, for all that rests on it. */
export type ChangeReach = (typeof CHANGE_REACHES)[number];

export const sheetChangesBody = z.strictObject({
  changes: z
    .array(z.strictObject({ leaf: leafKey, value: nonNegativeDecimalText, reach: z.enum(CHANGE_REACHES) }))
    .min(1)
    .max(MOST_CHANGES)
    .refine((changes) => new Set(changes.map(({ leaf }) => leaf)).size === changes.length, {
      error: 'names a leaf twice',
      params: { mend: 'Give one value for each leaf.' },
    }),
});

const wasAndNow = { was: workedAmount.nullable(), now: workedAmount.nullable() };

/** What taking values over changes, and what else it touches. */
export const sheetChangesSchema = z
  .strictObject({
    sheet: costSheetSchema,
    currency: currencySchema,
    /** Each value with where it is kept from now on, in words, and the record, as sources name it. */
    written: z.array(
      z.strictObject({
        leaf: leafKey,
        label: z.string(),
        was: workedAmount,
        now: workedAmount,
        reach: z.enum(CHANGE_REACHES),
        place: z.string(),
        record: z.string().nullable(),
      }),
    ),
    /** The sheet before and after, costed anew: prices and stock are chosen again where the changes ask for it. */
    columns: z.array(
      z.strictObject({
        quantity: z.number().int(),
        results: z.array(z.strictObject({ name: z.enum(SHEET_RESULTS), ...wasAndNow })),
      }),
    ),
    /** Other cost sheets that rest on what is changed everywhere, at their first number of pieces. */
    otherSheets: z.array(
      z.strictObject({
        id: recordId,
        title: z.string(),
        designName: z.string(),
        quantity: z.number().int(),
        /** Net price; null where it cannot be worked out, or where there are too many to do it here. */
        ...wasAndNow,
      }),
    ),
    /** Drafts of quotes with one of those sheets, or this one: they follow until they are sent. */
    draftQuotes: z.array(z.strictObject({ id: recordId, title: z.string() })),
  })
  .meta({ id: 'SheetChanges' });
export type SheetChanges = z.output<typeof sheetChangesSchema>;

export const exampleChangesBody = {
  changes: [{ leaf: 'material/ASH-4/yield', value: '0.8', reach: 'here' as const }],
};
export const exampleSheetChanges: z.input<typeof sheetChangesSchema> = {
  sheet: exampleCostSheet,
  currency: 'EUR',
  written: [
    {
      leaf: 'material/ASH-4/yield',
      label: 'Ash 4/4: yield, need as a share of what is bought',
      was: '0.7',
      now: '0.8',
      reach: 'here',
      place: 'an own value of this cost sheet',
      record: null,
    },
  ],
  columns: [{ quantity: 1, results: [{ name: 'netPrice', was: '405', now: '395' }] }],
  otherSheets: [],
  draftQuotes: [],
};
