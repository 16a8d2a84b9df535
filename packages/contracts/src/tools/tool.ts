import { ACQUISITIONS } from '@scantling/costing';
import { z } from 'zod';
import { boundedDecimal, ratioText } from '../bounded-decimal.ts';
import { moneyText, shareText } from '../decimal-text.ts';
import { recordCode } from '../designs/bill.ts';
import { calendarDate, givenName, recordId } from '../record.ts';
import { toolDepreciationSchema } from './depreciation-method.ts';

const hours = boundedDecimal({ digits: 9, places: 3, isPositive: true, example: '420' });

export const cutterSchema = z
  .strictObject({
    name: givenName,
    price: moneyText,
    sharpenings: boundedDecimal({ digits: 6, places: 0, example: '8' }),
    sharpeningPrice: moneyText,
    /** Hours of cutting over its whole life, all sharpenings included. */
    lifeHours: hours,
    /** Came with the machine and is in its cost, so that it is taken out of it. */
    isInMachineCost: z.boolean().default(false),
  })
  .meta({ id: 'Cutter' });

export const toolInputSchema = z.strictObject({
  /** Operations name the machine by it. */
  code: recordCode,
  name: givenName,
  acquisition: z.enum(ACQUISITIONS),
  acquiredOn: calendarDate,
  /** What was paid; 0 for a tool that was given. */
  bookCost: moneyText,
  /** What the same capacity costs today. */
  replacementCost: moneyText,
  salvage: moneyText,
  lifeYears: boundedDecimal({ digits: 3, places: 3, isPositive: true, example: '15' }),
  /** null where hours do not wear it out. */
  lifeHours: hours.nullable(),
  /** The machine's own productive hours in a year. */
  hoursPerYear: boundedDecimal({ digits: 4, places: 3, isPositive: true, example: '420' }),
  depreciation: toolDepreciationSchema,
  interestRate: shareText,
  insuranceTaxRate: shareText,
  floorAreaM2: boundedDecimal({ digits: 5, places: 3, example: '6.5' }),
  ratedKw: boundedDecimal({ digits: 5, places: 3, example: '2.2' }),
  /** Average draw over rated power while it runs. */
  load: shareText,
  /** Maintenance as a share of straight-line depreciation of the replacement cost. */
  maintenanceShare: ratioText,
  /** The part of maintenance that hours cause; the rest comes with the years. */
  maintenanceByHours: shareText,
  /** Needed exactly for a hired tool. */
  hirePerHour: moneyText.nullable(),
  cutters: z.array(cutterSchema).max(50),
  /** Codes of machines that run whenever this one does (dust extraction). */
  attached: z.array(recordCode).max(20),
  soldOn: calendarDate.nullable(),
  /** What it fetched, less the cost of selling; null counts as nothing once it is sold. */
  soldFor: moneyText.nullable(),
  notes: z.string().max(5000),
});
export type ToolInput = z.output<typeof toolInputSchema>;

export const toolSchema = toolInputSchema
  .extend({ id: recordId, isDemo: z.boolean(), version: z.number().int() })
  .meta({ id: 'Tool' });
export type ToolRecord = z.output<typeof toolSchema>;

export const exampleToolInput = {
  code: 'PLANER',
  name: 'Planer-thicknesser 410 mm',
  acquisition: 'used',
  acquiredOn: '2023-05-10',
  bookCost: '2800',
  replacementCost: '5200',
  salvage: '600',
  lifeYears: '15',
  lifeHours: '9000',
  hoursPerYear: '300',
  depreciation: { name: 'straight-line' },
  interestRate: '0.04',
  insuranceTaxRate: '0.02',
  floorAreaM2: '6',
  ratedKw: '3',
  load: '0.6',
  maintenanceShare: '0.5',
  maintenanceByHours: '0.8',
  hirePerHour: null,
  cutters: [
    {
      name: 'Planer knives, set of 4',
      price: '96',
      sharpenings: '6',
      sharpeningPrice: '24',
      lifeHours: '280',
      isInMachineCost: false,
    },
  ],
  attached: [],
  soldOn: null,
  soldFor: null,
  notes: '',
} as const satisfies z.input<typeof toolInputSchema>;
export const exampleTool = {
  ...exampleToolInput,
  id: '0193f6a0-7c11-7000-8000-000000000002',
  isDemo: false,
  version: 1,
} as const;
