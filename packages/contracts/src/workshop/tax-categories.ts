import { decimal } from '@scantling/decimals';
import { z } from 'zod';
import { shareText } from '../decimal-text.ts';
import { singleLine } from '../single-line.ts';

/**
 * Codes of EN 16931 (UNCL 5305, the part in use): S standard, Z zero rated, E exempt, AE reverse charge, K supply within
 * the European Union, G export, O outside the scope of tax. Which one applies is for the law and an accountant to say.
 */
export const TAX_CATEGORY_CODES = ['S', 'Z', 'E', 'AE', 'K', 'G', 'O'] as const;
export type TaxCategoryCode = (typeof TAX_CATEGORY_CODES)[number];

type Given = { category: TaxCategoryCode; rate: string; exemptionReason: string };
type Fault = { field: 'rate' | 'exemptionReason'; message: string; mend: string };

/** What EN 16931 asks of a category: BR-S-05, BR-Z-05 and their like for rates, BR-E-10 and its like for reasons. */
function faultsOf({ category, rate, exemptionReason }: Given): Fault[] {
  const isStandard = category === 'S';
  const needsReason = !isStandard && category !== 'Z';
  const faults: Fault[] = [];
  if (!shareText.safeParse(rate).success) return faults;
  if (isStandard === decimal(rate).isZero())
    faults.push({
      field: 'rate',
      message: isStandard ? 'is 0 in the standard category' : `is not 0 in category ${category}`,
      mend: isStandard
        ? 'Give a rate above 0, or choose another category.'
        : 'Set it to 0, or choose category S.',
    });
  if (needsReason === (exemptionReason === ''))
    faults.push({
      field: 'exemptionReason',
      message: needsReason ? `is missing in category ${category}` : `does not belong to category ${category}`,
      mend: needsReason ? 'Say why no tax is charged; it is printed on the paper.' : 'Leave it empty.',
    });
  return faults;
}

/** A way lines are taxed, as the workshop calls it. */
export const taxCategorySchema = z
  .strictObject({
    id: z
      .string()
      .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/)
      .max(40),
    name: singleLine(60).min(1),
    category: z.enum(TAX_CATEGORY_CODES),
    /** Share of the net amount: "0.25" for 25 %. */
    rate: shareText,
    /** Printed where no tax is charged. */
    exemptionReason: singleLine(200),
  })
  .superRefine((given, context) => {
    for (const { field, message, mend } of faultsOf(given))
      context.addIssue({ code: 'custom', path: [field], message, params: { mend } });
  })
  .meta({ id: 'TaxCategory' });
export type WorkshopTaxCategory = z.output<typeof taxCategorySchema>;

/** The workshop's tax categories; new lines start with the first. */
export const taxCategoriesSchema = z
  .array(taxCategorySchema)
  .min(1)
  .max(20)
  .superRefine((categories, context) => {
    const ids = categories.map(({ id }) => id);
    ids.forEach((id, at) => {
      if (ids.indexOf(id) < at)
        context.addIssue({
          code: 'custom',
          path: [at, 'id'],
          message: `"${id}" names another category already`,
          params: { mend: 'Give each category an id of its own.' },
        });
    });
  });
