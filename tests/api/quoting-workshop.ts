import { type letterheadSchema, workshopSettingsSchema } from '@scantling/contracts';
import type { z } from 'zod';
import { startTestApplication, type TestApplication } from './application.ts';

const BILL = [
  'row,id,name,quantity,material,length,width,thickness,finished,run h,setup h,grade',
  'part,shelf,Shelf,2,ASH-4,"31 1/2""","7 1/16""",3/4,all,,,',
  'operation,plane,Plane and cut,,,,,,,0.5,0.25,owner',
].join('\r\n');

const LETTERHEAD: z.input<typeof letterheadSchema> = {
  tradingName: 'Invented Joinery',
  address: { lines: ['1 Plane Street', 'Inventedtown'], countryCode: null },
  email: 'shop@joinery.example',
  phone: '+1 555 0100',
};

export type QuotingWorkshop = TestApplication & {
  /** Moves the clock: "2026-03-02", or a moment. */
  setTime: (moment: string) => void;
  clientId: string;
  /** Has no e-mail address. */
  quietClientId: string;
  costSheetId: string;
  designId: string;
  /** Enters the price of a board foot from a day on. */
  setPrice: (validFrom: string, amount: number) => Promise<void>;
};

/** The real application with a workshop that has a priced shelf to quote, two clients, and a clock to move. */
export async function startQuotingWorkshop(): Promise<QuotingWorkshop> {
  let now = new Date('2026-03-02T10:00:00.000Z');
  const test = await startTestApplication({ clock: () => now });
  const { database, request, as } = test;
  await database.workshop.create({
    data: {
      name: 'Test shop',
      currency: 'USD',
      unitSystem: 'imperial',
      settings: workshopSettingsSchema.parse({
        letterhead: LETTERHEAD,
        quoting: {
          taxCategories: [
            { id: 'full', name: 'VAT 20 %', category: 'S', rate: '0.2', exemptionReason: '' },
            {
              id: 'none',
              name: 'No tax',
              category: 'O',
              rate: '0',
              exemptionReason: 'Outside the scope of tax',
            },
          ],
          terms: 'Wood moves.',
        },
      }),
    },
  });
  await database.labourGrade.create({
    data: { code: 'owner', name: 'Owner', payPerHour: 30, burden: 0.2, productiveShare: 0.75, isOwner: true },
  });
  const supplier = await database.supplier.create({
    data: { code: 'yard', name: 'Invented Yard', currency: 'USD' },
  });
  const material = await database.material.create({
    data: {
      code: 'ASH-4',
      name: 'Ash 4/4',
      form: 'rough-lumber',
      nominalThicknessMm: 25.4,
      surfacedThicknessMm: 20.6375,
      yieldFactor: 0.5,
    },
  });
  const item = await database.supplierItem.create({
    data: { supplierId: supplier.id, code: 'A44', description: 'Ash', materialId: material.id },
  });
  const setPrice = async (validFrom: string, amount: number) => {
    const list = await database.priceList.create({
      data: {
        supplierId: supplier.id,
        name: validFrom,
        validFrom: new Date(validFrom),
        currency: 'USD',
        taxIncluded: false,
        taxRate: 0,
        taxRecoverable: 1,
        createdBy: 'test',
      },
    });
    await database.priceLine.create({
      data: { listId: list.id, itemId: item.id, unit: 'board-foot', amount, rowNumber: 2 },
    });
  };
  await setPrice('2026-01-01', 6.4);
  const design = await request
    .post('/api/designs')
    .set(as('maker'))
    .send({ code: 'SHELF', name: 'Shelf', description: '', unitSystem: 'imperial' })
    .expect(201);
  const designId: string = design.body.id;
  await request
    .post(`/api/designs/${designId}/bill-file?preview=false`)
    .set({ ...as('maker'), 'if-match': '"1"' })
    .attach('file', Buffer.from(BILL), 'bill.csv')
    .expect(200);
  const sheet = await request
    .post('/api/cost-sheets')
    .set(as('maker'))
    .send({
      title: 'Ash shelves',
      designId,
      clientId: null,
      basis: 'commission',
      onDate: null,
      quantities: [1],
      terms: {
        freight: '0',
        contingency: '0',
        quotingHours: '0',
        buyingHours: '0',
        deliveryHours: '0',
        discount: '0',
        policy: { kind: 'margin', margin: '0.3' },
      },
    })
    .expect(201);
  const client = await database.client.create({
    data: {
      name: 'Greta (invented)',
      email: 'greta@client.example',
      addressLines: ['4 Mill Lane', 'Inventedtown'],
    },
  });
  const quiet = await database.client.create({ data: { name: 'Otto (invented)' } });
  return {
    ...test,
    setTime: (moment) => {
      now = new Date(moment.length === 10 ? `${moment}T10:00:00.000Z` : moment);
    },
    clientId: client.id,
    quietClientId: quiet.id,
    costSheetId: sheet.body.id,
    designId,
    setPrice,
  };
}

/** The lines that the tests quote: shelves from the cost sheet, an option, two alternates, and delivery. */
export function quotedLines(costSheetId: string) {
  const common = { details: '', tax: 'full', pictures: [] };
  const finish = (isStandard: boolean) => ({ kind: 'alternate', group: 'Finish', isStandard }) as const;
  return [
    {
      kind: 'cost-sheet',
      id: 'shelves',
      ...common,
      description: 'Ash shelves',
      choice: { kind: 'included' },
      costSheetId,
      pieces: 3,
    },
    {
      kind: 'free',
      id: 'lamp',
      ...common,
      description: 'Reading lamp',
      choice: { kind: 'option' },
      quantity: '1',
      unit: 'piece',
      price: '90',
      cost: '61',
    },
    {
      kind: 'free',
      id: 'oil',
      ...common,
      description: 'Oiled',
      choice: finish(true),
      quantity: '3',
      unit: 'piece',
      price: '10',
      cost: '9',
    },
    {
      kind: 'free',
      id: 'paint',
      ...common,
      description: 'Painted',
      choice: finish(false),
      quantity: '3',
      unit: 'piece',
      price: '25',
      cost: '20',
    },
    {
      kind: 'delivery',
      id: 'van',
      ...common,
      description: 'Delivery',
      choice: { kind: 'included' },
      price: '50',
      cost: null,
    },
  ] as const;
}
