import { COST_BASES, HOURLY_BASES, MATERIAL_FORMS } from '@scantling/costing';
import { z } from 'zod';
import { boundedDecimal } from '../bounded-decimal.ts';
import { moneyText, shareText } from '../decimal-text.ts';
import { letterheadSchema } from './letterhead.ts';
import { newCostSheetSchema } from './new-cost-sheet.ts';
import { quotingDefaultsSchema } from './quoting-defaults.ts';

const millimetres = boundedDecimal({ digits: 6, places: 6, example: '3.2' });
const baseAmount = boundedDecimal({ digits: 12, places: 6, isPositive: true, example: '1500' });
const yieldText = shareText.refine((text) => /[1-9]/.test(text), {
  error: 'is a yield of 0',
  params: { mend: 'Give a share above 0, such as "0.6".' },
});

/** What is added to finished sizes of one form of material, and the share of it that ends up in parts. */
export const formDefaultsSchema = z
  .strictObject({
    lengthAllowance: millimetres,
    widthAllowance: millimetres,
    thicknessAllowance: millimetres,
    yieldFactor: yieldText,
    offcutValueShare: shareText,
  })
  .meta({ id: 'FormDefaults' });

/** Over what a pool of yearly costs is recovered: hours of a year, or yearly cost. */
export const overheadPoolSettingsSchema = z
  .strictObject({
    base: z.enum([...HOURLY_BASES, ...COST_BASES]),
    /** Hours, or cost, planned for the year. */
    plannedBase: baseAmount,
    /** The year as it went: what was spent net of rates, and the base there was; null while it is not known. */
    actual: z.strictObject({ amount: moneyText, base: baseAmount }).nullable(),
  })
  .meta({ id: 'OverheadPoolSettings' });

export const LOST_ENQUIRY_HOMES = ['administration-pool', 'labour-rate'] as const;

const NO_ALLOWANCE = { lengthAllowance: '0', widthAllowance: '0', thicknessAllowance: '0' };
const LEFTOVER_HALF = '0.5';

// Allowances, kerfs, yields and hours a workshop starts with are common practice, no source; the rough lumber yield is
// the least clear-face yield of No. 1 Common, 8/12 (American Hardwood Export Council, summary of lumber grades).
const STARTING_FORMS = {
  'rough-lumber': {
    lengthAllowance: '25',
    widthAllowance: '6',
    thicknessAllowance: '3',
    yieldFactor: '0.666667',
    offcutValueShare: LEFTOVER_HALF,
  },
  'dimensioned-lumber': {
    ...NO_ALLOWANCE,
    lengthAllowance: '25',
    yieldFactor: '0.85',
    offcutValueShare: LEFTOVER_HALF,
  },
  sheet: { ...NO_ALLOWANCE, yieldFactor: '0.8', offcutValueShare: LEFTOVER_HALF },
  length: { ...NO_ALLOWANCE, lengthAllowance: '25', yieldFactor: '0.9', offcutValueShare: '0' },
} as const;
const STARTING_POOL = { base: 'productive-hours', plannedBase: '1500', actual: null } as const;

/** Everything the workshop decides once for all its cost sheets; what is left out starts with common practice. */
export const workshopSettingsSchema = z
  .strictObject({
    /** Rent, heat and upkeep of a square metre a year. */
    floorCostPerM2: moneyText.default('0'),
    electricityPerKwh: moneyText.default('0'),
    /** Cost sheets point out prices from lists older than so many days. */
    priceAgeDays: z.number().int().min(1).max(9999).default(180),
    /** Width of a saw cut in mm. */
    kerf: millimetres.default('3'),
    /** mm lost to a resaw cut with its re-jointing pass. */
    resawKerf: millimetres.default('4'),
    /** mm taken off both outer faces together before the first resaw cut. */
    resawCleanUp: millimetres.default('3'),
    /** Real interest rate that a new tool record starts with. */
    interestRate: shareText.default('0.04'),
    /** Insurance and tax, share of the average investment, that a new tool record starts with. */
    insuranceTaxRate: shareText.default('0.02'),
    /** Reading of the average investment: (P - S)(N + 1) / (2N) + S, or (P + S) / 2. */
    averageInvestment: z.enum(['forestry', 'simple']).default('forestry'),
    forms: z.partialRecord(z.enum(MATERIAL_FORMS), formDefaultsSchema).default(STARTING_FORMS),
    workshopOverhead: overheadPoolSettingsSchema.default(STARTING_POOL),
    administrationOverhead: overheadPoolSettingsSchema.default(STARTING_POOL),
    /**
     * Where hours on lost enquiries come back: as an amount of the administration pool (the productive shares of
     * grades are then of the other hours), or in labour rates, whose productive shares leave them out.
     */
    lostEnquiryHours: z.enum(LOST_ENQUIRY_HOMES).default('administration-pool'),
    newCostSheet: newCostSheetSchema.prefault({}),
    letterhead: letterheadSchema.prefault({}),
    quoting: quotingDefaultsSchema.prefault({}),
  })
  .meta({ id: 'WorkshopSettings' });
export type WorkshopSettings = z.output<typeof workshopSettingsSchema>;
