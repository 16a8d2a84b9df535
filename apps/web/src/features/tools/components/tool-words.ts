import type { ToolRecord } from '@scantling/contracts';
import type { RateBasis } from '@scantling/costing';

export const ACQUISITION_WORDS: Readonly<Record<ToolRecord['acquisition'], string>> = {
  new: 'bought new',
  used: 'bought used',
  given: 'given',
  hired: 'hired',
  'shop-made': 'made in the shop',
};

export const METHOD_WORDS: Readonly<Record<ToolRecord['depreciation']['name'], string>> = {
  'straight-line': 'Straight line',
  'sum-of-years-digits': "Sum of the years' digits",
  'declining-balance': 'Declining balance',
  'tax-table': 'Tax table',
  'units-of-production': 'Hours run',
};

export const BASIS_WORDS: Readonly<Record<RateBasis, { readonly label: string; readonly meaning: string }>> =
  {
    book: { label: 'Book', meaning: 'what was paid, as the books write it off' },
    replacement: { label: 'Replacement', meaning: 'what pricing recovers' },
    marginal: { label: 'Marginal', meaning: 'what another hour costs' },
  };
