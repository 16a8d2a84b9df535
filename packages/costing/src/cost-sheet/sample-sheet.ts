import { type Bill, EMPTY_BILL } from '../bill-of-materials/index.ts';
import type { Tool } from '../machine-hour-rate/index.ts';
import type { Material } from '../material/index.ts';
import type { PriceOffer } from '../price-list/index.ts';
import type { CostSheetInput } from './cost-sheet-input.ts';

/** A small invented sheet with round numbers, so that tests can follow it by hand. */
export function sampleOffer(changes: Partial<PriceOffer> & Pick<PriceOffer, 'code'>): PriceOffer {
  return {
    id: `line-${changes.code}`,
    supplier: 'yard',
    supplierName: 'Invented Yard',
    listName: 'spring list',
    listDate: '2026-01-01',
    row: 2,
    unit: 'board-foot',
    currency: 'USD',
    breakKind: 'all-units',
    breaks: [{ from: '0', amount: '6' }],
    tax: { isIncluded: false, rate: '0', recoverableShare: '1' },
    ...changes,
  };
}

export const sampleOak: Material = {
  code: 'OAK-4',
  name: 'Oak 4/4',
  form: 'rough-lumber',
  nominalThickness: '25.4',
  surfacedThickness: '20.6375',
  density: '700',
  yieldFactor: '0.5',
  offcutValueShare: '0.4',
  offers: [sampleOffer({ code: 'OAK-4' })],
};

export const sampleScrew: Material = {
  code: 'SCREW',
  name: 'Screws',
  form: 'pack',
  packContent: '50',
  offers: [sampleOffer({ code: 'SCREW', unit: 'pack', breaks: [{ from: '0', amount: '5' }] })],
};

export const sampleSaw: Tool = {
  id: 'saw',
  name: 'Saw',
  acquisition: 'new',
  bookCost: '1000',
  replacementCost: '1000',
  salvage: '0',
  lifeYears: '10',
  hoursPerYear: '100',
  depreciation: { name: 'straight-line' },
  interestRate: '0',
  insuranceTaxRate: '0',
  floorAreaM2: '0',
  ratedKw: '2',
  load: '0.5',
  maintenanceShare: '0',
  maintenanceByHours: '1',
  cutters: [],
  attached: [],
};

export const sampleBill: Bill = {
  ...EMPTY_BILL,
  parts: [
    {
      id: 'top',
      name: 'Top',
      quantity: 1,
      material: 'OAK-4',
      length: '914.4',
      width: '304.8',
      thickness: '19',
      grain: 'length',
      facesFinished: 'all',
      lengthAllowance: '0',
      widthAllowance: '0',
    },
  ],
  components: [{ id: 'screws', name: 'Screws', quantity: '20', material: 'SCREW' }],
  operations: [
    {
      id: 'make',
      name: 'Make',
      setupHours: '1',
      runHours: '2',
      elapsedHours: '12',
      grade: 'owner',
      machine: 'saw',
      machineShare: '0.5',
    },
  ],
};

export const sampleSheet: CostSheetInput = {
  currency: 'USD',
  onDate: '2026-06-01',
  basis: 'shop',
  quantities: [1, 5],
  bill: sampleBill,
  materials: [sampleOak, sampleScrew],
  rates: {
    grades: [
      {
        id: 'owner',
        name: 'Owner',
        payPerHour: '24',
        burden: '0.25',
        productiveShare: '0.75',
        isOwner: true,
      },
    ],
    machines: [sampleSaw],
    shop: { floorCostPerM2: '0', electricityPerKwh: '0.2' },
    workshopOverhead: {
      id: 'workshop',
      name: 'Workshop',
      kind: 'workshop',
      amounts: [{ id: 'rent', name: 'Rent', yearlyAmount: '6000' }],
      base: 'productive-hours',
      plannedBase: '1200',
    },
    administrationOverhead: {
      id: 'administration',
      name: 'Administration',
      kind: 'administration',
      amounts: [{ id: 'books', name: 'Bookkeeping', yearlyAmount: '1200' }],
      base: 'productive-hours',
      plannedBase: '1200',
    },
    defaults: {},
    kerf: '3',
    resawKerf: '4',
    resawCleanUp: '3',
  },
  terms: {
    freight: '30',
    contingency: '0.1',
    quotingHours: '1',
    buyingHours: '0.5',
    deliveryHours: '0.5',
    discount: '0',
    policy: { kind: 'margin', margin: '0.25' },
  },
};
