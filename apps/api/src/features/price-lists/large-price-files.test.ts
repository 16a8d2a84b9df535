import { afterAll, beforeAll, expect, it } from 'vitest';
import { createTestDatabase, type TestDatabase } from '../../../../../tests/api/test-database.ts';
import { keepPriceFile } from './begin-price-import.ts';
import { importPriceFile } from './import-price-file.ts';
import { findPriceImport, toPriceImport } from './price-import-records.ts';
import { readPriceFile } from './read-price-file.ts';

let test: TestDatabase;

beforeAll(async () => {
  test = await createTestDatabase();
});

afterAll(() => test.drop());

it('takes 50,000 rows, and finds the one that is gone among them', async () => {
  const services = { database: test.database, clock: () => new Date() };
  const supplier = await test.database.supplier.create({ data: { code: 'Y', name: 'Y', currency: 'EUR' } });
  const header = 'code,description,unit,price';
  const lines = Array.from({ length: 50_000 }, (_, at) => `N${at},Thing ${at},each,${at % 97}.25`);
  const file = (rows: readonly string[]) => Buffer.from([header, ...rows].join('\n'));
  const terms = { supplierId: supplier.id, name: 'Large', validFrom: '2026-06-01' };
  const given = { terms, fileName: 'large.csv', bytes: file(lines), createdBy: 'test' };
  const done = await importPriceFile(services, given);
  expect(done).toMatchObject({ status: 'applied', rowsRead: 50_000, counts: { new: 50_000 } });
  expect(await test.database.priceLine.count({ where: { listId: done.priceListId ?? '' } })).toBe(50_000);
  expect((await importPriceFile(services, given)).status).toBe('unchanged');

  const { id } = await keepPriceFile(services, {
    ...given,
    terms: { ...terms, validFrom: '2026-06-02', isComplete: true },
    bytes: file(lines.slice(1)),
  });
  await readPriceFile(test.database, id);
  const read = toPriceImport(await findPriceImport(test.database, id));
  expect(read).toMatchObject({ status: 'previewed', counts: { unchanged: 49_999, gone: 1 } });
}, 120_000);
