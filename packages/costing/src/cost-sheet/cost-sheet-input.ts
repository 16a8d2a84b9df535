import type { Currency } from '@scantling/money';
import type { LengthUnit } from '@scantling/units';
import type { Bill } from '../bill-of-materials/index.ts';
import type { DrawnBill, Parameter, Variant } from '../design-parameters/index.ts';
import type { LabourGrade } from '../labour/index.ts';
import type { ShopCosts, Tool } from '../machine-hour-rate/index.ts';
import type { Material, MaterialForm } from '../material/index.ts';
import type { OverheadPool } from '../overhead/index.ts';
import type { PricePolicy } from '../price/price-policy.ts';
import type { SupplierTerms } from '../price-list/index.ts';

export const COSTING_BASES = ['shop', 'commission'] as const;
/**
 * shop: the piece is charged what it uses, leftovers go back to stock. commission: everything is bought for
 * this client and charged; leftovers enter stock at nil.
 */
export type CostingBasis = (typeof COSTING_BASES)[number];

/** What the shop adds to finished sizes, and the share of bought material that ends up in parts. */
export interface FormDefaults {
  /** mm */
  readonly lengthAllowance: string;
  /** mm, once per stave */
  readonly widthAllowance: string;
  /** mm, both faces together, where the material is planed by the shop */
  readonly thicknessAllowance: string;
  readonly yieldFactor: string;
  readonly offcutValueShare: string;
}

/** The shop's side of a cost sheet. */
export interface ShopRates {
  readonly grades: readonly LabourGrade[];
  readonly machines: readonly Tool[];
  readonly shop: ShopCosts;
  /** Reading of the average investment in machines; the forestry handbooks' when absent. */
  readonly averageInvestment?: 'forestry' | 'simple';
  readonly workshopOverhead: OverheadPool;
  readonly administrationOverhead: OverheadPool;
  readonly defaults: Readonly<Partial<Record<MaterialForm, FormDefaults>>>;
  /** A price from a list older than so many days is pointed out; never when absent. */
  readonly priceAgeDays?: number;
  /** Width of a saw cut in mm. */
  readonly kerf: string;
  /** mm lost to a resaw cut with its re-jointing pass, and off both outer faces before the first. */
  readonly resawKerf: string;
  readonly resawCleanUp: string;
}

export const OVERHEAD_AT = ['planned', 'actual'] as const;
/** planned: the year's planned amounts over the planned base. actual: the year as it went. */
export type OverheadAt = (typeof OVERHEAD_AT)[number];

/** What is agreed for this piece beside its bill. */
export interface CostTerms {
  /** Day the client has it promised for, YYYY-MM-DD; what comes later is pointed out. */
  readonly promisedDate?: string;
  /** At which base overhead is recovered; as planned when absent. */
  readonly overheadAt?: OverheadAt;
  /** Carriage to the client, per batch. */
  readonly freight: string;
  /** Contingency as a share of works cost and administration. */
  readonly contingency: string;
  /** Owner's hours for quoting, buying and delivery, per batch. */
  readonly quotingHours: string;
  readonly buyingHours: string;
  readonly deliveryHours: string;
  readonly discount: string;
  readonly policy: PricePolicy;
  /** Round the price to a multiple of this, up or to the nearest; none when absent. */
  readonly priceStep?: { readonly to: string; readonly direction: 'up' | 'nearest' };
}

/** A value that somebody gave one leaf for one cost sheet. */
export interface OwnValue {
  /** The key of the leaf. */
  readonly leaf: string;
  /** What the leaf was called when it got the value. */
  readonly label: string;
  readonly value: string;
  /** Who gave it. */
  readonly by: string;
  /** The day it was given, YYYY-MM-DD. */
  readonly on: string;
}

/** Everything a cost sheet rests on. Plain data: the same input always gives the same sheet. */
export interface CostSheetInput {
  readonly currency: Currency;
  /** Day whose prices are used, YYYY-MM-DD. */
  readonly onDate: string;
  readonly basis: CostingBasis;
  /** Numbers of pieces, one column each. */
  readonly quantities: readonly number[];
  /** Numbers may be formulas over the parameters. */
  readonly bill: DrawnBill;
  readonly parameters?: readonly Parameter[];
  readonly variants?: readonly Variant[];
  /** Id of the variant costed; as drawn when absent or null. */
  readonly variant?: string | null;
  /** Values of parameters over those of the variant: millimetres, numbers, codes of materials. */
  readonly parameterValues?: Readonly<Record<string, string>>;
  /** What a bare number of a formula is in, as a length; mm when absent. */
  readonly lengthUnit?: LengthUnit;
  readonly materials: readonly Material[];
  /** What suppliers ask of every order; one that is not here asks for no freight and no least order. */
  readonly suppliers?: readonly SupplierTerms[];
  readonly rates: ShopRates;
  readonly terms: CostTerms;
  /** Values that stand on this sheet alone, in place of what the records say. */
  readonly ownValues?: readonly OwnValue[];
}

/** The input with every formula worked out, as costing reads it. */
export type SizedSheetInput = Omit<CostSheetInput, 'bill'> & { readonly bill: Bill };
