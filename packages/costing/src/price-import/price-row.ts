import type { PricingUnitId } from '@scantling/units';
import type { BreakKind } from '../price-list/price-offer.ts';
import type { PriceColumn } from './price-columns.ts';

/** One price of a file, read. Decimals as text; what the file leaves out is absent. */
export interface PriceRow {
  readonly code: string;
  readonly description: string;
  /** Code of the material it is here. */
  readonly material?: string;
  readonly unit: PricingUnitId;
  readonly amount: string;
  /** Quantity from which the amount holds. */
  readonly from: string;
  readonly breakKind: BreakKind;
  readonly packSize?: string;
  readonly minimumQuantity?: string;
  readonly leadDays?: number;
}

/** What is wrong with a row, in which column, and what to do about it. */
export interface RowProblem {
  readonly column: PriceColumn;
  readonly message: string;
  readonly mend: string;
}

/** Supplier apart, what makes two rows the same price: code, unit and break. */
export function priceIdentity(row: Pick<PriceRow, 'code' | 'unit' | 'from'>): string {
  return JSON.stringify([row.code, row.unit, row.from]);
}
