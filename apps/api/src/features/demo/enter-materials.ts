import { exchangeRateFields, materialFields, supplierFields } from '@scantling/contracts';
import { Prisma } from '../../generated/prisma/client.ts';
import { type DemoRow, demoRows, isYes } from './demo-files.ts';

/** What a finish is besides a material, or null for what goes on no surface. */
function finishOf(row: DemoRow) {
  const { volumeSolids = null, coverageM2PerL = null } = row;
  if (volumeSolids === null && coverageM2PerL === null) return null;
  return {
    volumeSolids,
    coverageM2PerL,
    coverageIsTheoretical: isYes(row.coverageIsTheoretical),
    goesOnByWiping: isYes(row.goesOnByWiping),
    selfHeatingRags: isYes(row.selfHeatingRags),
  };
}

const FINISH_COLUMNS = [
  'volumeSolids',
  'coverageM2PerL',
  'coverageIsTheoretical',
  'goesOnByWiping',
  'selfHeatingRags',
];

function toMaterial(row: DemoRow, supplierIds: ReadonlyMap<string, string>) {
  const { preferredSupplier = '', ...rest } = row;
  const own = Object.fromEntries(Object.entries(rest).filter(([key]) => !FINISH_COLUMNS.includes(key)));
  const { finish, ...given } = materialFields.parse({
    ...own,
    finish: finishOf(row),
    preferredSupplierId: supplierIds.get(preferredSupplier) ?? null,
  });
  return { ...given, finish: finish ?? Prisma.DbNull, isDemo: true };
}

/**
 * Suppliers, materials and exchange rates of the demo.
 * @returns the suppliers' ids by their codes
 */
export async function enterMaterials(transaction: Prisma.TransactionClient): Promise<Map<string, string>> {
  const supplierIds = new Map<string, string>();
  for (const { taxIncluded, leadDays, ...row } of await demoRows('suppliers.csv')) {
    const given = supplierFields.parse({
      ...row,
      taxIncluded: isYes(taxIncluded),
      leadDays: leadDays === undefined ? null : Number(leadDays),
    });
    const { id, code } = await transaction.supplier.create({ data: { ...given, isDemo: true } });
    supplierIds.set(code, id);
  }
  const materials = (await demoRows('materials.csv')).map((row) => toMaterial(row, supplierIds));
  await transaction.material.createMany({ data: materials });
  const rates = (await demoRows('exchange-rates.csv')).map((row) => exchangeRateFields.parse(row));
  await transaction.exchangeRate.createMany({
    data: rates.map((rate) => ({ ...rate, onDate: new Date(rate.onDate), isDemo: true })),
  });
  return supplierIds;
}
