import { type CostSheetInput, EMPTY_BILL, type Material, type PriceOffer } from '@scantling/costing';

function offer(code: string, amount: number): PriceOffer {
  return {
    id: code,
    supplier: 'yard',
    supplierName: 'Invented Yard',
    listName: 'list',
    listDate: '2026-01-01',
    code,
    row: 1,
    unit: 'board-foot',
    currency: 'USD',
    breakKind: 'all-units',
    breaks: [
      { from: '0', amount: String(amount) },
      { from: '200', amount: String(amount * 0.9) },
    ],
    tax: { isIncluded: false, rate: '0', recoverableShare: '1' },
  };
}

/** A made-up design of so many lines: half parts, half operations, over 20 materials and 3 grades of labour. */
export function workshopSheet(lines: number): CostSheetInput {
  const parts = Math.floor(lines / 2);
  const materials: Material[] = Array.from({ length: 20 }, (_, index) => ({
    code: `M${index}`,
    name: `Material ${index}`,
    form: 'rough-lumber',
    nominalThickness: '25.4',
    surfacedThickness: '20.6375',
    density: '700',
    yieldFactor: '0.7',
    offcutValueShare: '0.3',
    offers: [offer(`M${index}`, 5 + index / 4)],
  }));
  return {
    currency: 'USD',
    onDate: '2026-06-01',
    basis: 'shop',
    quantities: [1],
    bill: {
      ...EMPTY_BILL,
      parts: Array.from({ length: parts }, (_, index) => ({
        id: `p${index}`,
        name: `Part ${index}`,
        quantity: 1 + (index % 4),
        material: `M${index % 20}`,
        length: String(300 + index * 7),
        width: String(40 + (index % 30) * 5),
        thickness: '19',
        grain: 'length',
        facesFinished: 'all',
      })),
      operations: Array.from({ length: lines - parts }, (_, index) => ({
        id: `o${index}`,
        name: `Operation ${index}`,
        setupHours: '0.1',
        runHours: String(0.05 + (index % 9) / 10),
        elapsedHours: '0',
        grade: `g${index % 3}`,
      })),
    },
    materials,
    rates: {
      grades: [0, 1, 2].map((index) => ({
        id: `g${index}`,
        name: `Grade ${index}`,
        payPerHour: 18 + index * 6,
        burden: 0.2,
        productiveShare: 0.75,
        isOwner: index === 2,
      })),
      machines: [],
      shop: { floorCostPerM2: 0, electricityPerKwh: 0 },
      workshopOverhead: {
        id: 'workshop',
        name: 'Workshop',
        kind: 'workshop',
        amounts: [{ id: 'rent', name: 'Rent', yearlyAmount: 9000 }],
        base: 'productive-hours',
        plannedBase: 1500,
      },
      administrationOverhead: {
        id: 'administration',
        name: 'Administration',
        kind: 'administration',
        amounts: [{ id: 'books', name: 'Books', yearlyAmount: 2400 }],
        base: 'productive-hours',
        plannedBase: 1500,
      },
      defaults: {
        'rough-lumber': {
          lengthAllowance: '25',
          widthAllowance: '6',
          thicknessAllowance: '5',
          yieldFactor: '0.7',
          offcutValueShare: '0.3',
        },
      },
      kerf: '3',
      resawKerf: '4',
      resawCleanUp: '3',
    },
    terms: {
      freight: '50',
      contingency: '0.05',
      quotingHours: '1',
      buyingHours: '1',
      deliveryHours: '1',
      discount: '0',
      policy: { kind: 'margin', margin: '0.3' },
    },
  };
}
