import { entered, input, toTable } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HOMES, type HomedAmount, oneHome, type RateHome, type RecoveredByRates } from './index.ts';

const context = { currency: 'EUR' } as const;
const recovery = (recoveredAs: string, value: number, by: RateHome = 'machine-rate'): RecoveredByRates => ({
  recoveredAs,
  by,
  perYear: input({
    key: `recovered/${recoveredAs}/${by}`,
    label: recoveredAs,
    unit: 'money/year',
    currency: 'EUR',
    value,
    source: entered(),
  }),
});
const amounts: readonly HomedAmount[] = [
  { id: 'rent', name: 'Rent', yearlyAmount: 12000, home: 'workshop-pool', recoveredAs: 'floor' },
  { id: 'power', name: 'Electricity', yearlyAmount: 1800, home: 'machine-rate', recoveredAs: 'power' },
  { id: 'pay', name: 'Pay and burden', yearlyAmount: 60000, home: 'labour-rate', recoveredAs: 'pay' },
  { id: 'books', name: 'Bookkeeping', yearlyAmount: 2400, home: 'administration-pool' },
];
const recovered = [recovery('floor', 3000), recovery('power', 1800), recovery('pay', 60000, 'labour-rate')];
const kinds = (...given: Parameters<typeof oneHome>) =>
  oneHome(...given).findings.map(({ kind, about }) => `${kind} ${about}`);

describe('the proof that each yearly amount has one home', () => {
  it('holds where the homes bring back what the year costs, pools net of rates', () => {
    const proof = oneHome(amounts, recovered, context);
    expect([proof.holds, proof.findings]).toEqual([true, []]);
    expect(proof.total.value.toNumber()).toBe(76200);
    expect(proof.rest.value.isZero()).toBe(true);
    expect(HOMES.map((home) => proof.homes[home].value.toNumber())).toEqual([4800, 60000, 9000, 2400]);
  });

  it('names what no rate recovers and what rates recover too much of', () => {
    expect(
      kinds(amounts, [recovery('floor', 3000), recovery('power', 1500), recovery('pay', 60000)], context),
    ).toEqual(['unrecovered Electricity']);
    const over = oneHome(amounts, [recovery('floor', 13000), ...recovered.slice(1)], context);
    expect(over.findings.map((finding) => finding.message)).toEqual([
      'rates recover 1000 a year more than "Rent" costs; correct the rates or the amount',
    ]);
    expect(over.rest.value.toNumber()).toBe(-1000);
    expect(over.holds).toBe(false);
  });

  it('names an amount with two homes, and a recovery two amounts claim', () => {
    const again: HomedAmount = {
      id: 'books',
      name: 'Bookkeeping',
      yearlyAmount: 2500,
      home: 'workshop-pool',
    };
    const proof = oneHome([...amounts, again], recovered, context);
    expect(proof.findings.map((finding) => finding.message)).toEqual([
      '"Bookkeeping" stands in administration-pool and in workshop-pool; keep it once',
    ]);
    expect(() => toTable({ total: proof.total }, { withDerivations: true })).not.toThrow();
    const cellar: HomedAmount = {
      ...amounts[0],
      id: 'cellar',
      name: 'Cellar',
      yearlyAmount: 900,
      home: 'workshop-pool',
      recoveredAs: 'floor',
    };
    expect(kinds([...amounts, cellar], recovered, context)).toEqual(['twice Cellar']);
  });

  it('holds where a part of one amount stands on its own, worked out, in another home', () => {
    const lost = recovery('lost hours', 1500, 'labour-rate').perYear;
    const parted = amounts.map((amount) => (amount.id === 'pay' ? { ...amount, less: lost } : amount));
    const own: HomedAmount = {
      id: 'lost',
      name: 'Lost hours',
      yearlyAmount: lost.value,
      home: 'administration-pool',
      worked: lost,
    };
    const rates = [...recovered.slice(0, 2), recovery('pay', 58500, 'labour-rate')];
    const proof = oneHome([...parted, own], rates, context);
    expect([proof.holds, proof.findings, proof.rest.value.toNumber()]).toEqual([true, [], 0]);
    expect(proof.total.value.toNumber()).toBe(76200);
    expect(proof.homes['administration-pool'].value.toNumber()).toBe(3900);
    // Put there without being taken off pay, the hours would be paid for twice.
    expect(oneHome([...amounts, own], rates, context).holds).toBe(false);
  });

  it('names what rates recover although nobody pays it', () => {
    expect(kinds(amounts, [...recovered, recovery('interest', 700)], context)).toEqual(['unpaid interest']);
  });

  it('leaves a rest that is exactly what the findings speak of', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            home: fc.constantFrom(...HOMES),
            yearly: fc.integer({ min: 0, max: 9999 }),
            back: fc.integer({ min: 0, max: 9999 }),
          }),
          { maxLength: 10 },
        ),
        (rows) => {
          const given = rows.map(
            ({ home, yearly }, n): HomedAmount => ({
              id: `a${n}`,
              name: `A${n}`,
              yearlyAmount: yearly,
              home,
              recoveredAs: `r${n}`,
            }),
          );
          const proof = oneHome(
            given,
            rows.map(({ back }, n) => recovery(`r${n}`, back)),
            context,
          );
          const expected = rows.reduce((rest, { home, yearly, back }) => {
            const isPool = home === 'workshop-pool' || home === 'administration-pool';
            return rest + (isPool && back <= yearly ? 0 : yearly - back);
          }, 0);
          expect(proof.rest.value.toNumber()).toBe(expected);
          for (const line of proof.lines) {
            const parts = [line.byMachineRates, line.byLabourRates, line.inPool, line.nowhere];
            const added = parts.reduce((all, part) => all + part.value.toNumber(), 0);
            expect(added).toBe(line.amount.value.toNumber());
          }
        },
      ),
    );
  });

  it('names the amount that is wrong', () => {
    const wrong: HomedAmount = { id: 'x', name: 'X', yearlyAmount: 'lots', home: 'workshop-pool' };
    expect(() => oneHome([wrong], [], context)).toThrow('amounts.0.yearlyAmount is "lots"');
    const lost = JSON.parse('{"id":"x","name":"X","yearlyAmount":1,"home":"attic"}') as HomedAmount;
    expect(() => oneHome([lost], [], context)).toThrow('amounts.0.home cannot be "attic"');
  });
});
