import { workshopSettingsSchema } from '@scantling/contracts';
import type { Database } from '../../apps/api/src/database/connect.ts';

const WOODS = [
  { code: 'ASH-4', name: 'Ash 4/4', amount: 6.4 },
  { code: 'OAK-4', name: 'Oak 4/4', amount: 7.9 },
];

/** An invented shop with two woods at a price and an owner's grade, for tests of designs. */
export async function enterShelfShop(database: Database): Promise<void> {
  await database.workshop.create({
    data: {
      name: 'Test shop',
      currency: 'USD',
      unitSystem: 'metric',
      settings: workshopSettingsSchema.parse({}),
    },
  });
  await database.labourGrade.create({
    data: { code: 'owner', name: 'Owner', payPerHour: 30, burden: 0.2, productiveShare: 0.75, isOwner: true },
  });
  const { id: supplierId } = await database.supplier.create({
    data: { code: 'yard', name: 'Invented Yard', currency: 'USD' },
  });
  const { id: listId } = await database.priceList.create({
    data: {
      supplierId,
      name: 'spring',
      validFrom: new Date('2026-01-01'),
      currency: 'USD',
      taxIncluded: false,
      taxRate: 0,
      taxRecoverable: 1,
      createdBy: 'test',
    },
  });
  for (const [index, { code, name, amount }] of WOODS.entries()) {
    const material = await database.material.create({
      data: {
        code,
        name,
        form: 'rough-lumber',
        nominalThicknessMm: 25.4,
        surfacedThicknessMm: 20.6375,
        yieldFactor: 0.5,
      },
    });
    const item = await database.supplierItem.create({
      data: { supplierId, code, description: name, materialId: material.id },
    });
    await database.priceLine.create({
      data: { listId, itemId: item.id, unit: 'board-foot', amount, rowNumber: index + 2 },
    });
  }
}
