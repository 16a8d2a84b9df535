import { type CostSheetInput, EMPTY_BILL } from '@scantling/costing';
import { exampleTerms } from './cost-sheet.ts';

/** The least a cost sheet can be worked out from, for the API's description. Invented. */
export const exampleSheetInput: CostSheetInput = {
  currency: 'EUR',
  onDate: '2026-03-01',
  basis: 'shop',
  quantities: [1],
  bill: {
    ...EMPTY_BILL,
    parts: [
      {
        id: 'shelf',
        name: 'Shelf',
        quantity: 1,
        material: 'ASH-4',
        length: { formula: 'length' },
        width: '180',
        thickness: '18',
        grain: 'length',
        facesFinished: 'all',
      },
    ],
    operations: [
      {
        id: 'plane',
        name: 'Plane and cut',
        setupHours: '0.25',
        runHours: '0.5',
        elapsedHours: '0',
        grade: 'owner',
      },
    ],
  },
  parameters: [{ id: 'length', label: 'Length', kind: 'length', value: '800', least: '300' }],
  variants: [{ id: 'long', name: 'Long', values: { length: '1000' } }],
  variant: 'long',
  materials: [
    {
      code: 'ASH-4',
      name: 'Ash 4/4',
      form: 'rough-lumber',
      nominalThickness: '25.4',
      surfacedThickness: '20.6375',
      density: '672',
      yieldFactor: '0.7',
      offers: [
        {
          id: '0193f6a0-7c11-7000-8000-000000000030',
          supplier: 'yard',
          supplierName: 'Invented Yard',
          listName: 'spring list',
          listDate: '2026-02-01',
          code: 'A44',
          row: 2,
          unit: 'cubic-metre',
          currency: 'EUR',
          breakKind: 'all-units',
          breaks: [{ from: '0', amount: '1450' }],
          tax: { isIncluded: false, rate: '0.2', recoverableShare: '1' },
        },
      ],
    },
  ],
  rates: {
    grades: [
      { id: 'owner', name: 'Owner', payPerHour: '28', burden: '0.2', productiveShare: '0.7', isOwner: true },
    ],
    machines: [],
    shop: { floorCostPerM2: '60', electricityPerKwh: '0.3' },
    workshopOverhead: {
      id: 'workshop',
      name: 'Workshop',
      kind: 'workshop',
      amounts: [{ id: 'rent', name: 'Rent', yearlyAmount: '7200' }],
      base: 'productive-hours',
      plannedBase: '1300',
    },
    administrationOverhead: {
      id: 'administration',
      name: 'Administration',
      kind: 'administration',
      amounts: [{ id: 'books', name: 'Bookkeeping', yearlyAmount: '1500' }],
      base: 'productive-hours',
      plannedBase: '1300',
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
    kerf: '3.2',
    resawKerf: '4',
    resawCleanUp: '3',
  },
  terms: exampleTerms,
};
