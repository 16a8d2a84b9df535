import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { workshopSettingsSchema } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { type Database, openDatabase } from '../../apps/api/src/database/connect.ts';
import { startEmbeddedPostgres } from '../../apps/api/src/database/embedded-postgres.ts';
import { migrate } from '../../apps/api/src/database/migrate.ts';
import { findCostSheet } from '../../apps/api/src/features/cost-sheets/cost-sheet-records.ts';
import { gatherInput } from '../../apps/api/src/features/cost-sheets/gather-input.ts';
import { workOutImpact } from '../../apps/api/src/features/price-impacts/work-out-impact.ts';
import { readFrozenWorking } from '../../apps/api/src/features/quotes/frozen-working.ts';
import { keepPrices } from '../../apps/api/src/features/quotes/quote-prices.ts';
import { findRevisionRow } from '../../apps/api/src/features/quotes/quote-records.ts';
import { writeDocument } from '../../apps/api/src/features/quotes/write-document.ts';
import { addQuote } from '../../apps/api/src/features/quotes/write-draft.ts';
import type { Benchmark, Measurement } from './benchmark.ts';
import { workshopSheet } from './workshop-sheet.ts';

const QUOTES = 5000;
const BILL_LINES = 40;
const LIST_LINES = 3000;
const TODAY = '2026-06-01';
const NOW = new Date(`${TODAY}T10:00:00Z`);

async function enterList(database: Database, supplierId: string, validFrom: string, factor: number) {
  const list = await database.priceList.create({
    data: {
      supplierId,
      name: validFrom,
      validFrom: new Date(validFrom),
      currency: 'USD',
      taxIncluded: false,
      taxRate: 0,
      taxRecoverable: 1,
      createdBy: 'bench',
    },
  });
  const items = await database.supplierItem.findMany({ where: { supplierId }, orderBy: { code: 'asc' } });
  await database.priceLine.createMany({
    data: items.map((item, at) => ({
      listId: list.id,
      itemId: item.id,
      unit: 'board-foot',
      amount: (5 + (at % 40) / 4) * factor,
      rowNumber: at + 2,
    })),
  });
  return list.id;
}

/** A workshop with one design of `BILL_LINES` lines and an older list of 3,000 prices. */
async function enterWorkshop(database: Database) {
  const input = workshopSheet(BILL_LINES);
  await database.workshop.create({
    data: {
      name: 'Invented',
      currency: 'USD',
      settings: workshopSettingsSchema.parse({
        letterhead: {
          tradingName: 'Invented Joinery',
          address: { lines: ['1 Plane Street', 'Inventedtown'], countryCode: null },
        },
        quoting: {
          taxCategories: [
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
  for (const { id, name, payPerHour, isOwner } of input.rates.grades)
    await database.labourGrade.create({
      data: { code: id, name, payPerHour, burden: 0.2, productiveShare: 0.75, isOwner },
    });
  const supplier = await database.supplier.create({
    data: { code: 'yard', name: 'Invented Yard', currency: 'USD' },
  });
  await database.material.createMany({
    data: input.materials.map(({ code, name }) => ({
      code,
      name,
      form: 'rough-lumber',
      nominalThicknessMm: 25.4,
      surfacedThicknessMm: 20.6375,
      yieldFactor: 0.7,
    })),
  });
  const materials = await database.material.findMany();
  const idOf = new Map(materials.map(({ code, id }) => [code, id]));
  await database.supplierItem.createMany({
    data: Array.from({ length: LIST_LINES }, (_, at) => ({
      supplierId: supplier.id,
      code: `I${String(at).padStart(5, '0')}`,
      description: `Invented item ${at}`,
      materialId: idOf.get(`M${at}`) ?? null,
    })),
  });
  await enterList(database, supplier.id, '2026-01-01', 1);
  const design = await database.design.create({
    data: {
      code: 'BENCH',
      name: 'Invented piece',
      revisions: {
        create: { number: 1, bill: JSON.parse(JSON.stringify(input.bill)), createdBy: 'bench' },
      },
    },
  });
  const sheet = await database.costSheet.create({
    data: {
      title: 'Invented piece',
      designId: design.id,
      basis: 'shop',
      // Of an earlier day, so that the sheet itself is not touched.
      onDate: new Date('2026-02-01'),
      quantities: [1],
      terms: JSON.parse(JSON.stringify(input.terms)),
    },
  });
  return { supplierId: supplier.id, costSheetId: sheet.id };
}

/** One quote frozen by the code that sends, and copies of it, so that 5,000 are open. */
async function sendQuotes(database: Database, costSheetId: string): Promise<void> {
  const { id: clientId } = await database.client.create({
    data: { name: 'Greta (invented)', addressLines: ['4 Mill Lane'] },
  });
  await database.$transaction(
    async (transaction) => {
      const given = {
        title: 'Invented',
        clientId,
        enquiryId: null,
        costSheet: { id: costSheetId, pieces: 1 },
      };
      const quoteId = await addQuote(transaction, given, { createdBy: 'bench' });
      const { id } = await transaction.quoteRevision.findFirstOrThrow({ where: { quoteId } });
      const row = await findRevisionRow(transaction, id);
      const { document, working } = await writeDocument(transaction, row, NOW);
      await keepPrices(transaction, id, readFrozenWorking(JSON.parse(JSON.stringify(working))));
      await transaction.quoteRevision.update({
        where: { id },
        data: {
          state: 'sent',
          sentAt: NOW,
          validUntil: new Date('2026-12-31'),
          document: JSON.parse(JSON.stringify(document)),
          working: JSON.parse(JSON.stringify(working)),
        },
      });
      await transaction.$executeRaw`
        insert into "Quote" (id, title, "clientId", state, "updatedAt")
        select 'q' || copy, 'Invented ' || copy, ${clientId}, 'sent', now() from generate_series(2, ${QUOTES}::int) copy`;
      await transaction.$executeRaw`
        insert into "QuoteRevision" (id, "quoteId", kind, series, revision, state, draft, document, working, "sentAt",
          "validUntil", "createdBy", "updatedAt")
        select 'r' || copy, 'q' || copy, kind, series, revision, state, draft, document, working, "sentAt",
          "validUntil", "createdBy", now()
        from "QuoteRevision" cross join generate_series(2, ${QUOTES}::int) copy where id = ${id}`;
      await transaction.$executeRaw`
        insert into "QuotePrice" ("revisionId", "lineId")
        select 'r' || copy, "lineId" from "QuotePrice" cross join generate_series(2, ${QUOTES}::int) copy
        where "revisionId" = ${id}`;
    },
    { timeout: 120_000, maxWait: 120_000 },
  );
}

async function measure(database: Database): Promise<Measurement> {
  const { supplierId, costSheetId } = await enterWorkshop(database);
  await sendQuotes(database, costSheetId);
  const listId = await enterList(database, supplierId, '2026-05-01', 1.1);
  await database.priceImpact.create({ data: { listId } });
  const start = performance.now();
  await workOutImpact(database, listId, TODAY);
  const oursMs = performance.now() - start;
  const moved = await database.priceImpactRow.count({ where: { listId, isWorked: true, stake: { gt: 0 } } });
  if (moved !== QUOTES) throw new Error(`${moved} of ${QUOTES} quotes moved`);
  const sheet = await findCostSheet(database, costSheetId);
  if (sheet === null) throw new Error('the cost sheet is gone');
  const input = await gatherInput(database, { ...sheet, onDate: TODAY }, TODAY);
  const from = performance.now();
  for (let quote = 0; quote < QUOTES; quote += 1) costSheet(input);
  return { oursMs, referenceMs: performance.now() - from };
}

export const benchmarks: readonly Benchmark[] = [
  {
    name: `re-cost 5,000 open quotes of a ${BILL_LINES}-line design against a list of 3,000 prices, kept`,
    reference: 'as many costings in the process',
    largestRatio: 1.5,
    run: async () => {
      const dataDir = mkdtempSync(join(tmpdir(), 'scantling-bench-'));
      const server = await startEmbeddedPostgres({ dataDir, log: () => undefined });
      try {
        await migrate(server.url);
        const database = openDatabase(server.url);
        try {
          return await measure(database);
        } finally {
          await database.$disconnect();
        }
      } finally {
        await server.stop();
        rmSync(dataDir, { recursive: true, force: true });
      }
    },
  },
];
