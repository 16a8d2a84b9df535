import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { writeWorkbook } from '@scantling/renderers';
import { connectOnce, openDatabase } from '../../apps/api/src/database/connect.ts';
import { startEmbeddedPostgres } from '../../apps/api/src/database/embedded-postgres.ts';
import { migrate } from '../../apps/api/src/database/migrate.ts';
import { importPriceFile } from '../../apps/api/src/features/price-lists/import-price-file.ts';
import type { Benchmark, Measurement } from './benchmark.ts';

const ROWS = 50_000;
const BATCH = 5000;

function priceRows(): string[][] {
  const rows = [['code', 'description', 'unit', 'price']];
  for (let row = 0; row < ROWS; row += 1)
    rows.push([`C${row}`, `Invented item ${row}`, 'each', (1 + (row % 997) / 100).toFixed(2)]);
  return rows;
}

async function onDatabase(work: (url: string) => Promise<Measurement>): Promise<Measurement> {
  const dataDir = mkdtempSync(join(tmpdir(), 'scantling-bench-'));
  const server = await startEmbeddedPostgres({ dataDir, log: () => undefined });
  try {
    await migrate(server.url);
    return await work(server.url);
  } finally {
    await server.stop();
    rmSync(dataDir, { recursive: true, force: true });
  }
}

/** The same rows into a plain table with the columns of a price, in batches, by bare SQL. */
async function bareInsertMs(url: string, rows: readonly string[][]): Promise<number> {
  const client = await connectOnce(url);
  try {
    await client.query(
      'create table bare_price (id bigserial primary key, code text, description text, unit text, amount numeric(18,6))',
    );
    const start = performance.now();
    await client.query('begin');
    for (let from = 1; from < rows.length; from += BATCH) {
      const batch = rows.slice(from, from + BATCH);
      await client.query(
        'insert into bare_price (code, description, unit, amount) select * from unnest($1::text[], $2::text[], $3::text[], $4::numeric[])',
        [0, 1, 2, 3].map((column) => batch.map((row) => row[column])),
      );
    }
    await client.query('commit');
    return performance.now() - start;
  } finally {
    await client.end();
  }
}

/** The same rows into the product's own tables, with their keys, by bare SQL in batches: what keeping them costs. */
async function keptInsertMs(url: string, rows: readonly string[][]): Promise<number> {
  const client = await connectOnce(url);
  try {
    await client.query(
      `insert into "Supplier" (id, code, name, currency, "updatedAt") values ('bare', 'bare', 'Bare', 'USD', now())`,
    );
    await client.query(
      `insert into "PriceList" (id, "supplierId", name, "validFrom", currency, "taxIncluded", "taxRate",
        "taxRecoverable", "createdBy") values ('bare', 'bare', 'Bare', '2026-01-01', 'USD', false, 0, 1, 'bench')`,
    );
    const start = performance.now();
    await client.query('begin');
    for (let from = 1; from < rows.length; from += BATCH) {
      const batch = rows.slice(from, from + BATCH);
      const [codes, descriptions, units, amounts] = [0, 1, 2, 3].map((column) =>
        batch.map((row) => row[column]),
      );
      const ids = batch.map(() => randomUUID());
      await client.query(
        `insert into "SupplierItem" (id, "supplierId", code, description)
          select id, 'bare', code, description from unnest($1::text[], $2::text[], $3::text[]) as given(id, code, description)`,
        [ids, codes, descriptions],
      );
      await client.query(
        `insert into "PriceLine" (id, "listId", "itemId", unit, amount, "rowNumber")
          select gen_random_uuid()::text, 'bare', item, unit, amount, place + $4
          from unnest($1::text[], $2::text[], $3::numeric[]) with ordinality as given(item, unit, amount, place)`,
        [ids, units, amounts, from],
      );
    }
    await client.query('commit');
    return performance.now() - start;
  } finally {
    await client.end();
  }
}

async function importMs(url: string, fileName: string, content: Uint8Array<ArrayBuffer>): Promise<number> {
  const database = openDatabase(url);
  try {
    const supplier = await database.supplier.create({
      data: { code: 'bench', name: 'Invented supplier', currency: 'USD' },
    });
    const start = performance.now();
    const { status } = await importPriceFile(
      { database, clock: () => new Date() },
      {
        fileName,
        bytes: content,
        createdBy: 'bench',
        terms: { supplierId: supplier.id, name: 'list', validFrom: '2026-01-01' },
      },
    );
    if (status !== 'applied') throw new Error(`the import ended as ${status}`);
    return performance.now() - start;
  } finally {
    await database.$disconnect();
  }
}

const FILES = [
  {
    name: 'CSV',
    fileName: 'prices.csv',
    write: async (rows: string[][]) =>
      new Uint8Array(Buffer.from(rows.map((row) => row.join(',')).join('\r\n'))),
  },
  {
    name: 'XLSX',
    fileName: 'prices.xlsx',
    write: async (rows: string[][]) => new Uint8Array(await writeWorkbook([{ name: 'Prices', rows }])),
  },
];

const REFERENCES = [
  { reference: 'bare batched insert of the same rows', insertMs: bareInsertMs },
  { reference: "batched insert of the same rows into the product's own tables", insertMs: keptInsertMs },
];

export const benchmarks: readonly Benchmark[] = FILES.flatMap(({ name, fileName, write }) =>
  REFERENCES.map(({ reference, insertMs }) => ({
    name: `import 50,000 prices from ${name}`,
    reference,
    run: () =>
      onDatabase(async (url) => {
        const rows = priceRows();
        const content = await write(rows);
        return { oursMs: await importMs(url, fileName, content), referenceMs: await insertMs(url, rows) };
      }),
  })),
);
