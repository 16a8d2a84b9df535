import type { SourceKind } from '../source.ts';

/** Under which heading a leaf stands, by where it came from; in the order of the sheet. */
export const INPUT_GROUPS = [
  'Terms, and what was entered',
  'Prices and suppliers’ terms',
  'Bill of materials',
  'Shop rates',
  'Tools and machines',
  'Allowances and published values',
  'Fixed by definition',
] as const;
export type InputGroup = (typeof INPUT_GROUPS)[number];

export const GROUP_OF: Readonly<Record<SourceKind, InputGroup>> = {
  'price-list': 'Prices and suppliers’ terms',
  'supplier-terms': 'Prices and suppliers’ terms',
  'exchange-rate': 'Prices and suppliers’ terms',
  entered: 'Terms, and what was entered',
  'measured-time': 'Terms, and what was entered',
  'cost-sheet': 'Terms, and what was entered',
  'what-if': 'Terms, and what was entered',
  simulation: 'Terms, and what was entered',
  'own-value': 'Terms, and what was entered',
  'bill-of-materials': 'Bill of materials',
  'cutting-plan': 'Bill of materials',
  'shop-rate': 'Shop rates',
  'tool-record': 'Tools and machines',
  'standard-allowance': 'Allowances and published values',
  'common-practice': 'Allowances and published values',
  published: 'Allowances and published values',
  definition: 'Fixed by definition',
};
