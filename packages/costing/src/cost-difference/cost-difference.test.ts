import { decimal, roundHalfAway } from '@scantling/decimals';
import { CurrencyMismatchError } from '@scantling/money';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CostSheetInput } from '../cost-sheet/index.ts';
import { sampleOak, sampleOffer, sampleScrew, sampleSheet } from '../cost-sheet/sample-sheet.ts';
import { type CostDifference, costDifference } from './cost-difference.ts';
import { sampleColumn } from './sample-column.ts';

interface Choices {
  readonly oakPrice: number;
  readonly screwPrice: number;
  readonly length: number;
  readonly pay: number;
  readonly rent: number;
  readonly markup: number;
  readonly isCommission: boolean;
  readonly supplier: string;
  readonly hasScrews: boolean;
  readonly hasGlueUp: boolean;
}

const AS_DRAWN: Choices = {
  oakPrice: 6,
  screwPrice: 5,
  length: 914.4,
  pay: 24,
  rent: 6000,
  markup: 30,
  isCommission: false,
  supplier: 'yard',
  hasScrews: true,
  hasGlueUp: false,
};

function inputOf(changes: Partial<Choices> = {}): CostSheetInput {
  const chosen = { ...AS_DRAWN, ...changes };
  const { bill, rates } = sampleSheet;
  const glueUp = {
    ...bill.operations[0],
    id: 'glue-up',
    name: 'Glue up',
    setupHours: '0.5',
    runHours: '0.25',
  };
  return {
    ...sampleSheet,
    quantities: [1],
    basis: chosen.isCommission ? 'commission' : 'shop',
    bill: {
      ...bill,
      parts: bill.parts.map((part) => ({ ...part, length: String(chosen.length) })),
      components: chosen.hasScrews ? bill.components : [],
      operations: chosen.hasGlueUp
        ? [...bill.operations, glueUp as (typeof bill.operations)[number]]
        : bill.operations,
    },
    materials: [
      {
        ...sampleOak,
        offers: [
          sampleOffer({
            code: 'OAK-4',
            supplier: chosen.supplier,
            supplierName: `Invented ${chosen.supplier}`,
            breaks: [{ from: '0', amount: String(chosen.oakPrice) }],
          }),
        ],
      },
      {
        ...sampleScrew,
        offers: [
          sampleOffer({
            code: 'SCREW',
            unit: 'pack',
            breaks: [{ from: '0', amount: String(chosen.screwPrice) }],
          }),
        ],
      },
    ],
    rates: {
      ...rates,
      grades: rates.grades.map((grade) => ({ ...grade, payPerHour: String(chosen.pay) })),
      workshopOverhead: {
        ...rates.workshopOverhead,
        amounts: [{ id: 'rent', name: 'Rent', yearlyAmount: String(chosen.rent) }],
      },
    },
    terms: { ...sampleSheet.terms, policy: { kind: 'markup', markup: String(chosen.markup / 100) } },
  };
}

const between = (was: Partial<Choices>, now: Partial<Choices>): CostDifference =>
  costDifference(sampleColumn(inputOf(was)), sampleColumn(inputOf(now)));

const anyChoices: fc.Arbitrary<Choices> = fc.record({
  oakPrice: fc.integer({ min: 1, max: 40 }),
  screwPrice: fc.integer({ min: 1, max: 9 }),
  length: fc.integer({ min: 200, max: 2400 }),
  pay: fc.integer({ min: 10, max: 60 }),
  rent: fc.integer({ min: 1000, max: 20_000 }),
  markup: fc.integer({ min: 0, max: 90 }),
  isCommission: fc.boolean(),
  supplier: fc.constantFrom('yard', 'mill'),
  hasScrews: fc.boolean(),
  hasGlueUp: fc.boolean(),
});

const words = ({ changes }: CostDifference): string[] =>
  changes.map(({ cause, kind, key }) => `${cause} ${kind} ${key}`);

// No outside source but where one is named: these hold what "adds up" means here.
describe('costDifference', () => {
  it('adds up exactly, and turned round flips every sign', () => {
    fc.assert(
      fc.property(anyChoices, anyChoices, (one, other) => {
        const there = between(one, other);
        for (const total of ['cost', 'price'] as const) {
          const sum = there.changes.reduce((all, { effect }) => all.plus(effect[total]), decimal(0));
          expect(there.was[total].plus(sum).toString()).toBe(there.now[total].toString());
        }
        const back = between(other, one);
        const effects = (difference: CostDifference, sign: number) =>
          Object.fromEntries(
            difference.changes.map(({ cause, kind, key, effect }) => [
              `${cause} ${kind} ${key}`,
              [effect.cost.times(sign).plus(0).toString(), effect.price.times(sign).plus(0).toString()],
            ]),
          );
        expect(effects(back, -1)).toEqual(effects(there, 1));
      }),
      { numRuns: 60 },
    );
  });

  it('says nothing of a sheet beside itself', () => {
    fc.assert(
      fc.property(anyChoices, (one) => {
        expect(between(one, one).changes).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });

  it('shares what two causes do together by halves, as the Shapley value of two factors does', () => {
    // 1 x 3 ft x 1 ft at a yield of 0.5: 6 board feet at 6; then 12 at 9. By hand: price 3 x (6 + 12) / 2 = 27, length
    // 6 x (6 + 9) / 2 = 45, both with administration, contingency and 10 % of contingency on top: x 1.1.
    const { changes, was, now } = between({}, { oakPrice: 9, length: 1828.8 });
    const effectOf = (key: string) =>
      roundHalfAway(changes.find((change) => change.key === key)?.effect.cost ?? 0, 6).toString();
    expect(effectOf('price/yard/OAK-4/board-foot/0')).toBe('29.7');
    expect(effectOf('bill/part top/length')).toBe('49.5');
    expect(roundHalfAway(now.cost.minus(was.cost), 6).toString()).toBe('79.2');
  });

  it('names each cause, and lines that came, went or are chosen otherwise', () => {
    expect(words(between({}, { pay: 30, rent: 7000 }))).toEqual([
      'rate leaf labour/owner/pay-per-hour',
      'rate leaf overhead/workshop/amount/rent/yearly-amount',
    ]);
    const supplier = between({}, { supplier: 'mill' });
    // The same price at another yard: it moves nothing, so there is nothing to tell.
    expect(supplier.changes).toEqual([]);
    const dearer = between({}, { supplier: 'mill', oakPrice: 8 }).changes;
    expect(dearer).toMatchObject([
      { cause: 'rule', kind: 'line', key: 'material/direct-materials/OAK-4', label: 'Oak 4/4' },
    ]);
    expect(dearer[0]?.why).toBe('another supplier: Invented yard, now Invented mill');
    const came = between({}, { hasGlueUp: true }).changes;
    expect(came.map(({ kind, key, why }) => [kind, key, why])).toEqual([
      ['line', 'work/glue-up', 'a line that came'],
    ]);
    expect(between({}, { markup: 40 }).changes).toMatchObject([
      { cause: 'rule', kind: 'leaf', key: 'terms/policy/markup' },
    ]);
  });

  it('does not set two currencies side by side', () => {
    const euro = sampleColumn({
      ...inputOf(),
      currency: 'EUR',
      materials: inputOf().materials.map((one) => ({
        ...one,
        offers: one.offers.map((offer) => ({ ...offer, currency: 'EUR' as const })),
      })),
    });
    expect(() => costDifference(sampleColumn(inputOf()), euro)).toThrow(CurrencyMismatchError);
  });
});
