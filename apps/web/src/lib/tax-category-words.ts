import type { TaxCategoryCode } from '@scantling/contracts';

/** The categories of tax by their codes in EN 16931, in words. */
export const TAX_CATEGORY_WORDS: Readonly<Record<TaxCategoryCode, string>> = {
  S: 'S – standard or reduced rate',
  Z: 'Z – zero rated',
  E: 'E – exempt',
  AE: 'AE – reverse charge',
  K: 'K – to a business in another EU country',
  G: 'G – export',
  O: 'O – outside the scope of tax',
};
