import { z } from 'zod';
import { ratioText } from '../bounded-decimal.ts';
import { shareText } from '../decimal-text.ts';

/** Share of the price, or share on top of the cost. */
export const NEW_SHEET_POLICIES = ['margin', 'markup'] as const;

/** The terms a new cost sheet starts with. 0 earns nothing beyond the costs: what to ask is for the maker to say. */
export const newCostSheetSchema = z
  .strictObject({
    policy: z.enum(NEW_SHEET_POLICIES).default('margin'),
    /** Of the price for a margin, on top of the cost for a markup. */
    share: ratioText.default('0'),
    contingency: shareText.default('0'),
  })
  .refine(({ policy, share }) => policy === 'markup' || shareText.safeParse(share).success, {
    path: ['share'],
    error: 'is a margin of more than the whole price',
    params: { mend: 'Write a margin below 100 %, or choose a markup.' },
  })
  .meta({ id: 'NewCostSheetTerms' });
export type NewCostSheetTerms = z.output<typeof newCostSheetSchema>;
