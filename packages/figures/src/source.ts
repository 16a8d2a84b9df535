/** Where a leaf came from. */
export const SOURCE_KINDS = [
  'price-list',
  'supplier-terms',
  'tool-record',
  'shop-rate',
  'bill-of-materials',
  'measured-time',
  'entered',
  'standard-allowance',
  'common-practice',
  'definition',
  'published',
  'exchange-rate',
  'cutting-plan',
  'cost-sheet',
  'what-if',
  'simulation',
  'own-value',
] as const;

export type SourceKind = (typeof SOURCE_KINDS)[number];

export interface Source {
  readonly kind: SourceKind;
  /** In words a maker understands: "Alder & Wray price list of 2026-03-01, line 41 (RO-84)". */
  readonly text: string;
  /** The record to open, where there is one ("price-line:42", "tool:planer"). */
  readonly record?: string;
}

/** A value somebody typed, or a stateless calculation was given. */
export function entered(text = 'entered by hand'): Source {
  return { kind: 'entered', text };
}

/** A value that holds by definition ("25.4 mm in an inch"). */
export function definition(text: string): Source {
  return { kind: 'definition', text };
}

/** A trade allowance nobody has published. */
export function commonPractice(text: string): Source {
  return { kind: 'common-practice', text: `${text} (common practice, no source)` };
}

/** A value from a named publication. */
export function published(text: string): Source {
  return { kind: 'published', text };
}
