import {
  ACQUISITIONS,
  BREAK_KINDS,
  COST_BASES,
  COSTING_BASES,
  type CostSheetInput,
  HOURLY_BASES,
  MATERIAL_FORMS,
  OVERHEAD_POOLS,
  type Tool,
} from '@scantling/costing';
import { z } from 'zod';
import { costTermsSchema, quantitiesSchema } from '../cost-sheets/cost-sheet.ts';
import {
  decimalText,
  moneyText,
  nonNegativeDecimalText,
  positiveDecimalText,
  shareText,
} from '../decimal-text.ts';
import { billSchema, recordCode, rowId } from '../designs/bill.ts';
import { parametersSchema, parameterValuesSchema, variantsSchema } from '../designs/parameters.ts';
import { currencySchema } from '../figures.ts';
import { ownValuesSchema } from '../own-values/own-value.ts';
import { priceUnitSchema } from '../price-lists/price-list.ts';
import { calendarDate } from '../record.ts';
import { toolDepreciationSchema } from '../tools/depreciation-method.ts';

const someName = z.string().min(1).max(200);
const amount = nonNegativeDecimalText;

const cutterSchema = z.strictObject({
  id: recordCode,
  name: someName,
  price: amount,
  sharpenings: nonNegativeDecimalText,
  sharpeningPrice: amount,
  lifeHours: positiveDecimalText,
  isInMachineCost: z.boolean().exactOptional(),
});

const hireSchema = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('hour'), price: amount }),
  z.strictObject({ by: z.literal('day'), price: amount, hoursPerDay: positiveDecimalText }),
]);

const toolFields = {
  id: recordCode,
  name: someName,
  acquisition: z.enum(ACQUISITIONS),
  bookCost: amount,
  replacementCost: amount,
  salvage: amount,
  lifeYears: positiveDecimalText,
  lifeHours: positiveDecimalText.exactOptional(),
  hoursPerYear: positiveDecimalText,
  depreciation: toolDepreciationSchema,
  interestRate: shareText,
  insuranceTaxRate: shareText,
  floorAreaM2: nonNegativeDecimalText,
  ratedKw: nonNegativeDecimalText,
  load: shareText,
  maintenanceShare: nonNegativeDecimalText,
  maintenanceByHours: shareText,
  cutters: z.array(cutterSchema).max(50),
  hire: hireSchema.exactOptional(),
  firstYear: z.number().int().min(1900).max(2200).exactOptional(),
  monthsInFirstYear: positiveDecimalText.exactOptional(),
};

/** A tool with its whole record; a machine that runs along has none running along with it in turn. */
const toolInputSchema: z.ZodType<Tool, Tool> = z.strictObject({
  ...toolFields,
  attached: z.array(z.strictObject({ ...toolFields, attached: z.array(z.never()).max(0) })).max(10),
});

const overheadPoolSchema = z.strictObject({
  id: recordCode,
  name: someName,
  kind: z.enum(OVERHEAD_POOLS),
  amounts: z.array(z.strictObject({ id: recordCode, name: someName, yearlyAmount: amount })).max(200),
  recoveredByRates: amount.exactOptional(),
  base: z.enum([...HOURLY_BASES, ...COST_BASES]),
  plannedBase: positiveDecimalText,
  actual: z.strictObject({ amount: decimalText, base: positiveDecimalText }).exactOptional(),
});

const purchaseTaxSchema = z.strictObject({
  isIncluded: z.boolean(),
  rate: shareText,
  recoverableShare: shareText,
});

const exchangeSchema = z.strictObject({
  to: currencySchema,
  rate: positiveDecimalText,
  onDate: calendarDate,
  source: someName,
});

/** What a supplier asks of every order; `code` is the supplier as offers name it. */
const supplierTermsSchema = z.strictObject({
  code: someName,
  name: someName,
  currency: currencySchema,
  freightPerOrder: moneyText.exactOptional(),
  minimumOrder: moneyText.exactOptional(),
  tax: purchaseTaxSchema,
  exchange: exchangeSchema.exactOptional(),
});

const offerSchema = z.strictObject({
  id: someName,
  supplier: someName,
  supplierName: someName,
  listId: someName.exactOptional(),
  listName: someName,
  listDate: calendarDate,
  validTo: calendarDate.exactOptional(),
  endedFrom: calendarDate.exactOptional(),
  code: someName,
  row: z.number().int().min(0),
  unit: priceUnitSchema,
  currency: currencySchema,
  breakKind: z.enum(BREAK_KINDS),
  breaks: z
    .array(
      z.strictObject({
        from: nonNegativeDecimalText,
        amount: moneyText,
        line: z
          .strictObject({
            id: someName,
            listId: someName,
            listName: someName,
            listDate: calendarDate,
            row: z.number().int().min(0),
          })
          .exactOptional(),
      }),
    )
    .min(1)
    .max(50),
  packSize: positiveDecimalText.exactOptional(),
  minimumQuantity: nonNegativeDecimalText.exactOptional(),
  leadDays: z.number().int().min(0).exactOptional(),
  tax: purchaseTaxSchema,
  exchange: exchangeSchema.exactOptional(),
});

const materialSchema = z.strictObject({
  code: recordCode,
  name: someName,
  form: z.enum(MATERIAL_FORMS),
  family: recordCode.exactOptional(),
  nominalThickness: positiveDecimalText.exactOptional(),
  surfacedThickness: positiveDecimalText.exactOptional(),
  thickness: positiveDecimalText.exactOptional(),
  width: positiveDecimalText.exactOptional(),
  length: positiveDecimalText.exactOptional(),
  density: positiveDecimalText.exactOptional(),
  yieldFactor: shareText.exactOptional(),
  offcutValueShare: shareText.exactOptional(),
  packContent: positiveDecimalText.exactOptional(),
  boardContent: positiveDecimalText.exactOptional(),
  volumeSolids: shareText.exactOptional(),
  coverage: positiveDecimalText.exactOptional(),
  isCoverageTheoretical: z.boolean().exactOptional(),
  goesOnByWiping: z.boolean().exactOptional(),
  selfHeatingRags: z.boolean().exactOptional(),
  preferredSupplier: someName.exactOptional(),
  offers: z.array(offerSchema).max(200),
});

const formDefaultsInput = z.strictObject({
  lengthAllowance: nonNegativeDecimalText,
  widthAllowance: nonNegativeDecimalText,
  thicknessAllowance: nonNegativeDecimalText,
  yieldFactor: shareText,
  offcutValueShare: shareText,
});

/** Everything a cost sheet rests on; the same input always gives the same answer. */
export const costSheetInputSchema: z.ZodType<CostSheetInput, CostSheetInput> = z
  .strictObject({
    currency: currencySchema,
    onDate: calendarDate,
    basis: z.enum(COSTING_BASES),
    quantities: quantitiesSchema,
    bill: billSchema,
    parameters: parametersSchema.exactOptional(),
    variants: variantsSchema.exactOptional(),
    variant: rowId.nullable().exactOptional(),
    parameterValues: parameterValuesSchema.exactOptional(),
    lengthUnit: z.enum(['mm', 'in']).exactOptional(),
    materials: z.array(materialSchema).max(2000),
    suppliers: z.array(supplierTermsSchema).max(500).exactOptional(),
    rates: z.strictObject({
      grades: z
        .array(
          z.strictObject({
            id: recordCode,
            name: someName,
            payPerHour: amount,
            burden: nonNegativeDecimalText,
            productiveShare: shareText,
            isOwner: z.boolean(),
          }),
        )
        .max(100),
      machines: z.array(toolInputSchema).max(200),
      shop: z.strictObject({ floorCostPerM2: amount, electricityPerKwh: amount }),
      averageInvestment: z.enum(['forestry', 'simple']).exactOptional(),
      workshopOverhead: overheadPoolSchema,
      administrationOverhead: overheadPoolSchema,
      defaults: z.partialRecord(z.enum(MATERIAL_FORMS), formDefaultsInput),
      priceAgeDays: z.number().int().min(1).exactOptional(),
      kerf: nonNegativeDecimalText,
      resawKerf: nonNegativeDecimalText,
      resawCleanUp: nonNegativeDecimalText,
    }),
    terms: costTermsSchema,
    ownValues: ownValuesSchema.max(300).exactOptional(),
  })
  .meta({ id: 'CostSheetInput' });
