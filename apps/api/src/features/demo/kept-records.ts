import { materialCodesIn } from '@scantling/costing';
import type { Prisma } from '../../generated/prisma/client.ts';
import { drawingOf } from '../designs/design-records.ts';
import { sheetsInQuotes } from '../quotes/demo-quotes.ts';
import { demoListHashes } from './enter-prices.ts';

/** Ids of demo records that records of the workshop's own rest on, so that they stay. */
export interface KeptRecords {
  readonly designs: readonly string[];
  /** Named by own quotes, or with own scenarios. */
  readonly costSheets: readonly string[];
  readonly clients: readonly string[];
  readonly materials: readonly string[];
  readonly suppliers: readonly string[];
  readonly grades: readonly string[];
  readonly tools: readonly string[];
  /** Currencies of suppliers that stay, whose exchange rates stay with them. */
  readonly currencies: readonly string[];
}

const DEMO = { isDemo: true } as const;
const OWN = { isDemo: false } as const;
const idsOf = (rows: readonly { id: string }[]) => rows.map(({ id }) => id);

/** What all revisions of these designs name, since a sheet may be pinned to any. */
async function codesInBills(transaction: Prisma.TransactionClient, where: Prisma.DesignWhereInput) {
  const designs = await transaction.design.findMany({
    where,
    include: { revisions: true },
  });
  const drawings = designs.flatMap(({ revisions }) => revisions.map(drawingOf));
  const materials = drawings.flatMap(materialCodesIn);
  const operations = drawings.flatMap(({ bill }) => bill.operations);
  const given = (codes: readonly (string | undefined)[]) => [
    ...new Set(codes.filter((code) => code !== undefined)),
  ];
  return {
    materials: given(materials),
    grades: given(operations.map(({ grade }) => grade)),
    machines: given(operations.map(({ machine }) => machine)),
  };
}

/** Codes of the machines and of all that run along with them. */
async function withAttached(transaction: Prisma.TransactionClient, machines: readonly string[]) {
  const tools = await transaction.tool.findMany({ select: { code: true, attached: true, isDemo: true } });
  const wanted = new Set([...machines, ...tools.filter((tool) => !tool.isDemo).map(({ code }) => code)]);
  for (let before = 0; before !== wanted.size; ) {
    before = wanted.size;
    for (const tool of tools) {
      if (wanted.has(tool.code)) for (const code of tool.attached) wanted.add(code);
    }
  }
  return [...wanted];
}

/** Suppliers with a price list that is not the demo's, or who price a material that stays. */
async function suppliersThatStay(transaction: Prisma.TransactionClient, materialIds: readonly string[]) {
  const pricesWhatStays = {
    items: { some: { material: { OR: [OWN, { id: { in: [...materialIds] } }] } } },
  };
  const hasOwnList = { priceLists: { some: { sourceSha256: { notIn: await demoListHashes() } } } };
  const isPreferred = { materials: { some: OWN } };
  return transaction.supplier.findMany({
    where: { ...DEMO, OR: [pricesWhatStays, hasOwnList, isPreferred] },
    select: { id: true, currency: true },
  });
}

/** Finds what stays: whatever an own cost sheet, design, person, tool or price list needs, and what that needs. */
export async function findKeptRecords(transaction: Prisma.TransactionClient): Promise<KeptRecords> {
  const costSheets = idsOf(
    await transaction.costSheet.findMany({
      where: {
        ...DEMO,
        OR: [{ id: { in: await sheetsInQuotes(transaction) } }, { scenarios: { some: OWN } }],
      },
      select: { id: true },
    }),
  );
  const ofSheets = { costSheets: { some: { OR: [OWN, { id: { in: costSheets } }] } } };
  const designs = idsOf(
    await transaction.design.findMany({ where: { ...DEMO, ...ofSheets }, select: { id: true } }),
  );
  const clients = idsOf(
    await transaction.client.findMany({
      where: { ...DEMO, OR: [ofSheets, { enquiries: { some: OWN } }, { quotes: { some: OWN } }] },
      select: { id: true },
    }),
  );
  const named = await codesInBills(transaction, { OR: [OWN, { id: { in: designs } }] });
  const inBills = { in: named.materials };
  const materials = idsOf(
    await transaction.material.findMany({
      where: { ...DEMO, OR: [{ code: inBills }, { family: inBills }] },
      select: { id: true },
    }),
  );
  const grades = await transaction.labourGrade.findMany({
    where: {
      ...DEMO,
      OR: [
        { code: { in: named.grades } },
        { people: { some: OWN } },
        { enquiryHours: { some: { enquiry: OWN } } },
      ],
    },
    select: { id: true },
  });
  const machines = await withAttached(transaction, named.machines);
  const tools = await transaction.tool.findMany({
    where: { ...DEMO, code: { in: machines } },
    select: { id: true },
  });
  const suppliers = await suppliersThatStay(transaction, materials);
  return {
    designs,
    costSheets,
    clients,
    materials,
    suppliers: idsOf(suppliers),
    grades: idsOf(grades),
    tools: idsOf(tools),
    currencies: [...new Set(suppliers.map(({ currency }) => currency))],
  };
}
