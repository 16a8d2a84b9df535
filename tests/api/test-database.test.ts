import { afterAll, beforeAll, expect, it } from 'vitest';
import { createTestDatabase, type TestDatabase } from './test-database.ts';

let first: TestDatabase;
let second: TestDatabase;

beforeAll(async () => {
  [first, second] = await Promise.all([createTestDatabase(), createTestDatabase()]);
});

afterAll(async () => {
  await Promise.all([first.drop(), second.drop()]);
});

it('gives each test file tables of its own', async () => {
  await first.database.supplier.create({ data: { code: 'FIRST', name: 'First yard', currency: 'EUR' } });
  expect(await first.database.supplier.count()).toBe(1);
  expect(await second.database.supplier.count()).toBe(0);
});
