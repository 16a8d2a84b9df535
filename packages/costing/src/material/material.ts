import type { PriceOffer } from '../price-list/price-offer.ts';

export const MATERIAL_FORMS = [
  'rough-lumber',
  'dimensioned-lumber',
  'sheet',
  'each',
  'pack',
  'volume',
  'weight',
  'area',
  'length',
  'service',
] as const;
export type MaterialForm = (typeof MATERIAL_FORMS)[number];

/** A material as costing sees it. Lengths are decimal text in millimetres. */
export interface Material {
  readonly code: string;
  readonly name: string;
  readonly form: MaterialForm;
  /** Materials that differ only in thickness share a family. */
  readonly family?: string;
  /** Rough lumber: thickness it is sold by (4/4 is 25.4). */
  readonly nominalThickness?: string;
  /** Rough lumber: what is left once both faces are planed. */
  readonly surfacedThickness?: string;
  /** Sheets and dimensioned lumber: what it really measures. */
  readonly thickness?: string;
  readonly width?: string;
  readonly length?: string;
  /** kg/m3 as used. */
  readonly density?: string;
  /** Rough part face on face bought; the shop's default for the form when absent. */
  readonly yieldFactor?: string;
  /** What a leftover is worth as a share of its cost; the shop's default for the form when absent. */
  readonly offcutValueShare?: string;
  /** How much one pack holds, in the unit the material is used in. */
  readonly packContent?: string;
  /** Board feet in a board as the yard sells it: bought in whole boards where given. */
  readonly boardContent?: string;
  /** Finishes: share of solids by volume, as applied. */
  readonly volumeSolids?: string;
  /** Finishes: m2 that a litre covers in one coat, by the label. */
  readonly coverage?: string;
  /** The label's coverage counts no loss in spraying. */
  readonly isCoverageTheoretical?: boolean;
  /** Goes on with a cloth and builds no film, so that only its coverage says how much it takes. */
  readonly goesOnByWiping?: boolean;
  /** Rags with it can catch fire by themselves. */
  readonly selfHeatingRags?: boolean;
  readonly preferredSupplier?: string;
  readonly offers: readonly PriceOffer[];
}
