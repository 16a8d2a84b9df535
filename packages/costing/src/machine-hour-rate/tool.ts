import type { DecimalLike } from '@scantling/decimals';
import type {
  AssetDisposal,
  DecliningBalance,
  StraightLine,
  SumOfYearsDigits,
  TaxTable,
} from '../depreciation/index.ts';

export const ACQUISITIONS = ['new', 'used', 'given', 'hired', 'shop-made'] as const;
/** How a tool came into the shop. */
export type Acquisition = (typeof ACQUISITIONS)[number];

/** Hours run count as units; their life is the tool's life in hours. */
export interface ToolHours {
  readonly name: 'units-of-production';
  /** Hours run in each year, as measured; the planned hours a year over the life when absent. */
  readonly hoursByYear?: readonly DecimalLike[];
}

/** How a tool is written off in the books. */
export type ToolDepreciation = StraightLine | DecliningBalance | SumOfYearsDigits | TaxTable | ToolHours;

/** A blade, cutter block, bit or belt, costed by its own life and not by the machine's. */
export interface Cutter {
  readonly id: string;
  readonly name: string;
  readonly price: DecimalLike;
  /** How often it is sharpened in its life. */
  readonly sharpenings: DecimalLike;
  readonly sharpeningPrice: DecimalLike;
  /** Hours of cutting over its whole life, all sharpenings included. */
  readonly lifeHours: DecimalLike;
  /** Came with the machine and is in its cost, so that it is taken out of it. False when absent. */
  readonly isInMachineCost?: boolean;
}

/** What a hired tool costs: by the hour, or by the day over the hours it runs in a day. */
export type Hire =
  | { readonly by: 'hour'; readonly price: DecimalLike }
  | { readonly by: 'day'; readonly price: DecimalLike; readonly hoursPerDay: DecimalLike };

/** A tool or machine of the shop. Shares and rates are fractions (0.05 is 5 %). */
export interface Tool {
  readonly id: string;
  readonly name: string;
  readonly acquisition: Acquisition;
  /** What was paid; 0 for a given tool. */
  readonly bookCost: DecimalLike;
  /** What the same capacity costs today. */
  readonly replacementCost: DecimalLike;
  /** What it is expected to fetch at the end of its life. */
  readonly salvage: DecimalLike;
  /** Years it lasts from when the shop got it. */
  readonly lifeYears: DecimalLike;
  /** Hours it lasts from when the shop got it; absent where hours do not wear it out. */
  readonly lifeHours?: DecimalLike;
  /** The machine's own productive hours in a year. */
  readonly hoursPerYear: DecimalLike;
  readonly depreciation: ToolDepreciation;
  /** Real rate: nominal less inflation. */
  readonly interestRate: DecimalLike;
  /** Insurance and taxes a year, as a share of the average investment. */
  readonly insuranceTaxRate: DecimalLike;
  readonly floorAreaM2: DecimalLike;
  readonly ratedKw: DecimalLike;
  /** Average draw over rated power while it runs. */
  readonly load: DecimalLike;
  /** Maintenance as a share of straight-line depreciation of the replacement cost. */
  readonly maintenanceShare: DecimalLike;
  /** The part of maintenance that hours cause; the rest comes with the years. */
  readonly maintenanceByHours: DecimalLike;
  readonly cutters: readonly Cutter[];
  /** Machines that run whenever this one does (dust extraction), each a tool with hours of its own. */
  readonly attached: readonly Tool[];
  /** Needed exactly for a hired tool. */
  readonly hire?: Hire;
  /** Calendar year it came into the shop; schedules are numbered from 1 when absent. */
  readonly firstYear?: number;
  readonly monthsInFirstYear?: DecimalLike;
  readonly disposal?: AssetDisposal;
}

/** What a machine-hour rate is for. */
export const RATE_BASES = ['book', 'replacement', 'marginal'] as const;
/**
 * book: what was paid, as the books write it off. replacement: what pricing recovers. marginal: what
 * another hour costs, which make-or-buy needs.
 */
export type RateBasis = (typeof RATE_BASES)[number];

/** Costs of the shop that every machine shares. */
export interface ShopCosts {
  /** Rent, heat and upkeep of a square metre a year. */
  readonly floorCostPerM2: DecimalLike;
  readonly electricityPerKwh: DecimalLike;
}
