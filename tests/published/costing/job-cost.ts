import {
  type CostSheetInput,
  costSheet,
  EMPTY_BILL,
  type OverheadPool,
  type PriceOffer,
} from '@scantling/costing';
import { z } from 'zod';
import type { Runner } from './runner.ts';

const jobSchema = z.strictObject({
  /** [quantity, unit cost] */
  materials: z.array(z.tuple([z.number(), z.number()])),
  /** [hours, wage] */
  labour: z.array(z.tuple([z.number(), z.number()])),
  overheadPerLabourDollar: z.number(),
  price: z.number(),
});

const NOTHING: OverheadPool = {
  id: 'administration',
  name: 'None',
  kind: 'administration',
  amounts: [],
  base: 'labour-cost',
  plannedBase: 1,
};

function offer(code: string, amount: number): PriceOffer {
  return {
    id: code,
    supplier: 'source',
    supplierName: 'The published example',
    listName: 'example',
    listDate: '2026-01-01',
    code,
    row: 1,
    unit: 'each',
    currency: 'USD',
    breakKind: 'all-units',
    breaks: [{ from: '0', amount: String(amount) }],
    tax: { isIncluded: false, rate: '0', recoverableShare: '1' },
  };
}

/** A job of a textbook through the whole cost sheet: what it names becomes materials, hands and overhead. */
export const jobCostRunner: Runner = (inputs) => {
  const job = jobSchema.parse(inputs);
  const input: CostSheetInput = {
    currency: 'USD',
    onDate: '2026-01-01',
    basis: 'commission',
    quantities: [1],
    bill: {
      ...EMPTY_BILL,
      components: job.materials.map(([quantity], index) => ({
        id: `c${index}`,
        name: `Item ${index}`,
        quantity: String(quantity),
        material: `M${index}`,
      })),
      operations: job.labour.map(([hours], index) => ({
        id: `o${index}`,
        name: `Work ${index}`,
        setupHours: '0',
        runHours: String(hours),
        elapsedHours: '0',
        grade: `g${index}`,
      })),
    },
    materials: job.materials.map(([, amount], index) => ({
      code: `M${index}`,
      name: `Item ${index}`,
      form: 'each',
      offers: [offer(`M${index}`, amount)],
    })),
    rates: {
      grades: job.labour.map(([, wage], index) => ({
        id: `g${index}`,
        name: `Worker ${index}`,
        payPerHour: wage,
        burden: 0,
        productiveShare: 1,
        isOwner: false,
      })),
      machines: [],
      shop: { floorCostPerM2: 0, electricityPerKwh: 0 },
      workshopOverhead: {
        id: 'workshop',
        name: 'Overhead',
        kind: 'workshop',
        amounts: [{ id: 'year', name: 'The year', yearlyAmount: job.overheadPerLabourDollar }],
        base: 'labour-cost',
        plannedBase: 1,
      },
      administrationOverhead: NOTHING,
      defaults: {},
      kerf: '0',
      resawKerf: '0',
      resawCleanUp: '0',
    },
    terms: {
      freight: '0',
      contingency: '0',
      quotingHours: '0',
      buyingHours: '0',
      deliveryHours: '0',
      discount: '0',
      policy: { kind: 'entered', price: String(job.price) },
    },
  };
  const [column] = costSheet(input).columns;
  return {
    materials: column?.classes.boughtIn.value,
    labour: column?.classes.directLabour.value,
    overhead: column?.classes.workshopOverhead.value,
    total: column?.classes.costOfProduction.value,
    profit: column?.price.profit.value,
  };
};
