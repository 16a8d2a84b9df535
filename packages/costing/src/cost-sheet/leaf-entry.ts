import { decimal } from '@scantling/decimals';
import type { SourceKind } from '@scantling/figures';
import type { Unit } from '@scantling/units';

/** A leaf, as much of it as says how another value for it is entered. */
export interface EnteredLeaf {
  /** Its key. */
  readonly id: string;
  readonly unit: Unit;
  readonly source?: { readonly kind: SourceKind };
}

/** What a value of a leaf is: a share is read as a percentage, a count is whole. */
export interface LeafEntry {
  readonly as: 'share' | 'count' | 'amount';
  readonly isAboveZero: boolean;
  /** The greatest value there can be. */
  readonly most?: '1';
}

/** Shares of a whole, which end at 1. */
const OF_A_WHOLE =
  /\/(yield|offcut-value|productive-share|load|maintenance-by-hours|tax-rate|tax-recoverable|discount|transfer-efficiency|volume-solids|interest-rate|insurance-tax-rate|margin|reject-share|learning\/rate)$/;
/** Shares that something is given on top, or for each of something else. */
const ON_TOP =
  /\/(burden|markup|contingency|maintenance-share|machine-share)$|^terms\/policy\/(materials|labour|machines|other)$/;
const COUNTED = /^bill\/(part|assembly) .*\/quantity$|\/(staves|spares|coats|sharpenings)$/;
const ABOVE_ZERO =
  /^(bill|material)\/.*\/(length|width|thickness|nominal-thickness)$|\/(yield|productive-share|transfer-efficiency|volume-solids|learning\/rate|pack-content|board-content|coverage|planned-base|life-years|life-hours|hours-per-year|sold-in|price-step|staves|coats)$|^bill\/(part|assembly|component|consumable) .*\/quantity$|^exchange-rate\//;
/** What nobody can decide otherwise, and the numbers of pieces, which a sheet has a column for each. */
const FIXED = /^(constant|quantity|tax-table)\//;

/** How another value is entered for a leaf; null where it holds by definition or publication. */
export function leafEntry({ id, unit, source }: EnteredLeaf): LeafEntry | null {
  if (source === undefined || source.kind === 'definition' || source.kind === 'published') return null;
  if (FIXED.test(id)) return null;
  const isAboveZero = ABOVE_ZERO.test(id);
  if (unit !== 'ratio') return { as: 'amount', isAboveZero };
  if (OF_A_WHOLE.test(id)) return { as: 'share', isAboveZero, most: '1' };
  if (ON_TOP.test(id)) return { as: 'share', isAboveZero };
  return { as: COUNTED.test(id) ? 'count' : 'amount', isAboveZero };
}

/** Why a value cannot stand at a leaf, and what to do; null where it can. */
export function leafValueProblem(
  leaf: EnteredLeaf,
  value: string,
): { readonly message: string; readonly mend: string } | null {
  const entry = leafEntry(leaf);
  if (entry === null)
    return { message: 'holds by definition', mend: 'Change another value that it is used with.' };
  const number = decimal(value);
  if (number.isNegative()) return { message: 'cannot be below 0', mend: 'Enter 0 or more.' };
  if (entry.isAboveZero && number.isZero()) return { message: 'cannot be 0', mend: 'Enter a value above 0.' };
  if (entry.most !== undefined && number.gt(entry.most))
    return { message: 'cannot be more than the whole', mend: 'Enter 100 % or less.' };
  if (entry.as === 'count' && !number.isInteger())
    return { message: 'is a number of whole things', mend: 'Enter a whole number.' };
  return null;
}
