import { decimal, ZERO } from '@scantling/decimals';
import { z } from 'zod';
import { shareText } from '../decimal-text.ts';
import { singleLine } from '../single-line.ts';
import { numberPatternsSchema, STARTING_NUMBER_PATTERNS } from './number-pattern.ts';
import { taxCategoriesSchema } from './tax-categories.ts';

/** A part of the total that falls due before the work is done. */
export const depositShareSchema = z
  .strictObject({
    /** When it falls due, in words ("On acceptance"). */
    label: singleLine(100).min(1),
    /** Share of the total with tax. */
    share: shareText,
  })
  .meta({ id: 'DepositShare' });

const depositSharesSchema = z
  .array(depositShareSchema)
  .max(10)
  .superRefine((deposits, context) => {
    const shares = deposits.map(({ share }) => share);
    if (!shares.every((share) => shareText.safeParse(share).success)) return;
    const sum = shares.reduce((all, share) => all.plus(share), ZERO);
    if (sum.gt(decimal(1)))
      context.addIssue({
        code: 'custom',
        message: 'are more than the whole together',
        params: { mend: 'Let the shares add up to at most 100 %; the rest falls due at the end.' },
      });
  });

const days = z.number().int().min(0).max(365);

/**
 * What a new quote starts with. Days, deposit and numbers are common practice, no source; without a tax set up, lines
 * are outside its scope, since only the law and an accountant can say which tax applies.
 */
export const quotingDefaultsSchema = z
  .strictObject({
    /** Days from sending during which a quote can be accepted. */
    validityDays: days.min(1).default(30),
    /** Days from its date in which an invoice is to be paid. */
    paymentDays: days.default(14),
    depositShares: depositSharesSchema.default([{ label: 'On acceptance', share: '0.5' }]),
    /** exclusive: tax comes on top of prices; inclusive: prices contain it. */
    priceMode: z.enum(['exclusive', 'inclusive']).default('exclusive'),
    taxCategories: taxCategoriesSchema.default([
      {
        id: 'no-tax',
        name: 'No tax',
        category: 'O',
        rate: '0',
        exemptionReason: 'Not subject to tax',
      },
    ]),
    /** Terms at the foot of a quote; blank lines part paragraphs. */
    terms: z.string().trim().max(10_000).default(''),
    numberPatterns: numberPatternsSchema.default(STARTING_NUMBER_PATTERNS),
  })
  .meta({ id: 'QuotingDefaults' });
export type QuotingDefaults = z.output<typeof quotingDefaultsSchema>;
