import { workshopSettingsSchema } from '@scantling/contracts';
import type { TestApplication } from './application.ts';

const HEADERS = 'row,id,name,quantity,material,length,width,thickness,finished,run h,setup h,grade';
/** A shelf as a bill file. */
export const SHELF_BILL = [
  HEADERS,
  'part,shelf,Shelf,2,ASH-4,"31 1/2""","7 1/16""",3/4,all,,,',
  'operation,plane,Plane and cut,,,,,,,0.5,0.25,owner',
].join('\r\n');

/** A workshop in inches with a grade, a supplier of ash and a design without a bill; answers the design's id. */
export async function enterShelf(test: TestApplication): Promise<string> {
  const { database } = test;
  await database.workshop.create({
    data: {
      name: 'Test shop',
      currency: 'USD',
      unitSystem: 'imperial',
      settings: workshopSettingsSchema.parse({}),
    },
  });
  await database.labourGrade.create({
    data: { code: 'owner', name: 'Owner', payPerHour: 30, burden: 0.2, productiveShare: 0.75, isOwner: true },
  });
  const supplier = await database.supplier.create({
    data: {
      code: 'yard',
      name: 'Invented Yard',
      currency: 'USD',
      freightPerOrder: 35,
      minimumOrder: 10_000,
    },
  });
  const material = await database.material.create({
    data: {
      code: 'ASH-4',
      name: 'Ash 4/4',
      form: 'rough-lumber',
      nominalThicknessMm: 25.4,
      surfacedThicknessMm: 20.6375,
      yieldFactor: 0.5,
      densityKgM3: 672,
    },
  });
  const item = await database.supplierItem.create({
    data: { supplierId: supplier.id, code: 'A44', description: 'Ash', materialId: material.id },
  });
  const list = await database.priceList.create({
    data: {
      supplierId: supplier.id,
      name: 'spring',
      validFrom: new Date('2026-01-01'),
      currency: 'USD',
      taxIncluded: false,
      taxRate: 0,
      taxRecoverable: 1,
      createdBy: 'test',
    },
  });
  await database.priceLine.create({
    data: { listId: list.id, itemId: item.id, unit: 'board-foot', amount: 6.4, rowNumber: 2 },
  });
  const made = await test.request
    .post('/api/designs')
    .set({ ...test.as('maker'), 'idempotency-key': 'shelf' })
    .send({ code: 'SHELF', name: 'Shelf', description: '', unitSystem: 'imperial' });
  if (made.status !== 201) throw new Error(`the design was answered with ${made.status}`);
  return made.body.id;
}
