import { STARTING_NUMBER_PATTERNS } from '@scantling/contracts';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { createTestDatabase, type TestDatabase } from '../../../../tests/api/test-database.ts';
import { openDatabase } from '../database/connect.ts';
import { forgetDemoNumbers, nextNumber } from './next-number.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await createTestDatabase();
});
afterAll(() => test.drop());

async function setPattern(quote: string): Promise<void> {
  const settings = { quoting: { numberPatterns: { ...STARTING_NUMBER_PATTERNS, quote } } };
  const data = { name: 'Invented joinery', currency: 'EUR', settings };
  await test.database.workshop.upsert({ where: { id: 1 }, create: data, update: data });
}

beforeEach(async () => {
  await test.database.issuedNumber.deleteMany();
  await test.database.numberCounter.deleteMany();
  await setPattern('Q-{year}-{0000}');
});

class TakenBack extends Error {}

/** Issues in a transaction of its own, which is taken back where `fails`. @returns the number, or nothing */
async function issue(year: number, options: { fails?: boolean; isDemo?: boolean } = {}) {
  try {
    return await test.database.$transaction(
      async (transaction) => {
        const isDemo = options.isDemo ?? false;
        const { number } = await nextNumber(transaction, { series: 'quote', year, isDemo });
        if (options.fails) throw new TakenBack();
        return number;
      },
      { maxWait: 60_000, timeout: 60_000 },
    );
  } catch (error) {
    if (error instanceof TakenBack) return undefined;
    throw error;
  }
}

const expected = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, at) => `Q-2026-${String(from + at).padStart(4, '0')}`);

describe('numbers of a series', () => {
  it('have no holes and no doubles when forty ask at once and some are taken back', async () => {
    const asked = Array.from({ length: 40 }, (_, at) => issue(2026, { fails: at % 3 === 0 }));
    const given = (await Promise.all(asked)).filter((number) => number !== undefined);
    expect(given.length).toBe(26);
    expect(given.sort()).toEqual(expected(1, 26));
    expect(await issue(2026)).toBe('Q-2026-0027');
  });

  it('have none either when several programs ask at once', async () => {
    const other = openDatabase(test.url, { maxConnections: 4 });
    try {
      const ask = () =>
        other.$transaction((transaction) => nextNumber(transaction, { series: 'quote', year: 2026 }));
      const given = await Promise.all(
        [1, 2, 3].flatMap(() => [ask().then((one) => one.number), issue(2026)]),
      );
      expect(given.sort()).toEqual(expected(1, 6));
    } finally {
      await other.$disconnect();
    }
  });

  it('begin anew with the year where the pattern has it', async () => {
    expect([await issue(2026), await issue(2026), await issue(2027), await issue(2026)]).toEqual([
      'Q-2026-0001',
      'Q-2026-0002',
      'Q-2027-0001',
      'Q-2026-0003',
    ]);
    await setPattern('{0}');
    expect([await issue(2026), await issue(2027)]).toEqual(['1', '2']);
  });

  it('are passed over where an earlier pattern gave them out', async () => {
    await issue(2026);
    await setPattern('Q-2026-{0000}');
    expect([await issue(2026), await issue(2026)]).toEqual(['Q-2026-0002', 'Q-2026-0003']);
  });

  it('of the demo are forgotten with it, those of the workshop stay', async () => {
    await issue(2026, { isDemo: true });
    await test.database.$transaction((transaction) => forgetDemoNumbers(transaction));
    expect(await issue(2026)).toBe('Q-2026-0001');
    await issue(2026, { isDemo: true });
    await test.database.$transaction((transaction) => forgetDemoNumbers(transaction, ['Q-2026-0002']));
    expect(await issue(2026)).toBe('Q-2026-0003');
  });
});
