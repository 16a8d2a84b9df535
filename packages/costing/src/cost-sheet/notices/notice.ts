import type { SupplierOrder } from '../freight-lines.ts';
import type { MaterialLine, UnpricedMaterial } from '../material-lines.ts';
import type { PartNeed } from '../part-need.ts';
import type { SheetContext } from '../sheet-context.ts';

export const NOTICE_KINDS = [
  'no-price',
  'price-run-out',
  'price-old',
  'late',
  'below-minimum-order',
  'no-actual-overhead',
  'no-margin',
  'no-density',
  'own-value-gone',
  'self-heating-rags',
] as const;
export type NoticeKind = (typeof NOTICE_KINDS)[number];

export const NOTICE_WEIGHTS = ['missing', 'warning', 'caution'] as const;
/** missing: the numbers leave something out. warning: they may not hold. caution: somebody could be hurt. */
export type NoticeWeight = (typeof NOTICE_WEIGHTS)[number];

/** What somebody should know before relying on the sheet. */
export interface SheetNotice {
  readonly kind: NoticeKind;
  readonly weight: NoticeWeight;
  /** What it is about: a material's code, a supplier's, a pool's name. */
  readonly about: string;
  readonly message: string;
  readonly mend: string;
  /** The record to open, as sources name it. */
  readonly record: string;
  /** Numbers of pieces it holds for. */
  readonly quantities: readonly number[];
}

/** What notices of one number of pieces are read from. */
export interface NoticedColumn {
  readonly quantity: number;
  readonly materials: readonly MaterialLine[];
  readonly unpriced: readonly UnpricedMaterial[];
  readonly orders: readonly SupplierOrder[];
  readonly parts: readonly PartNeed[];
}

/** One reason to say something. */
export type NoticeRule = (
  column: NoticedColumn,
  sheet: SheetContext,
) => readonly Omit<SheetNotice, 'quantities'>[];
