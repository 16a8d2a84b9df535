import { describe, expect, it } from 'vitest';
import { costSheet } from '../cost-sheet.ts';
import type { CostSheetInput } from '../cost-sheet-input.ts';
import { sampleOak, sampleOffer, sampleScrew, sampleSheet } from '../sample-sheet.ts';
import { NOTICE_KINDS, type NoticeKind } from './notice.ts';

const oakAt = (changes: Parameters<typeof sampleOffer>[0]) => ({
  ...sampleOak,
  offers: [sampleOffer(changes)],
});
const { density: _unknown, ...oakWithoutDensity } = sampleOak;
const TAX = { isIncluded: false, rate: '0', recoverableShare: '1' };

/** For each kind a sheet that calls for it, with whom it is about and the numbers of pieces. */
const CASES: Record<
  NoticeKind,
  { sheet: Partial<CostSheetInput>; about: string; says: RegExp; at?: number[] }
> = {
  'no-price': {
    sheet: { materials: [{ ...sampleOak, offers: [] }, sampleScrew] },
    about: 'OAK-4',
    says: /not in the cost: no supplier has a price/,
  },
  'price-run-out': {
    sheet: { materials: [oakAt({ code: 'OAK-4', validTo: '2026-05-31' }), sampleScrew] },
    about: 'Invented Yard',
    says: /spring list of Invented Yard ran out on 2026-05-31; it still prices Oak 4\/4$/,
  },
  'price-old': {
    // Listed on 2026-01-01 and costed on 2026-06-01: 31 + 28 + 31 + 30 + 31 days.
    sheet: { rates: { ...sampleSheet.rates, priceAgeDays: 150 } },
    about: 'Invented Yard',
    says: /is 151 days old, and the workshop trusts 150; it prices Oak 4\/4, Screws$/,
  },
  late: {
    sheet: {
      materials: [oakAt({ code: 'OAK-4', leadDays: 14 }), sampleScrew],
      terms: { ...sampleSheet.terms, promisedDate: '2026-06-14' },
    },
    about: 'OAK-4',
    says: /comes on 2026-06-15, after the promised 2026-06-14/,
  },
  'below-minimum-order': {
    sheet: {
      suppliers: [{ code: 'yard', name: 'Invented Yard', currency: 'USD', minimumOrder: '150', tax: TAX }],
    },
    about: 'yard',
    // 36.00 of oak and a pack of screws at 5.00; five pieces order 190.00.
    says: /takes orders from 150 USD; this one comes to 41 USD/,
    at: [1],
  },
  'no-actual-overhead': {
    sheet: { terms: { ...sampleSheet.terms, overheadAt: 'actual' } },
    about: 'Workshop',
    says: /recovered as planned/,
  },
  'no-margin': {
    sheet: { terms: { ...sampleSheet.terms, policy: { kind: 'markup', markup: '0.0' } } },
    about: 'what new cost sheets start with',
    says: /rests on a markup of 0 %: it brings back the costs/,
  },
  'no-density': {
    sheet: { materials: [oakWithoutDensity, sampleScrew] },
    about: 'OAK-4',
    says: /leaves out Top/,
  },
  'own-value-gone': {
    sheet: {
      ownValues: [
        { leaf: 'material/ELM/yield', label: 'Elm: yield', value: '0.7', by: 'Odalie', on: '2026-06-01' },
      ],
    },
    about: 'Elm: yield',
    says: /own value 0.7 for "Elm: yield" changes nothing/,
  },
  'self-heating-rags': {
    sheet: { materials: [sampleOak, { ...sampleScrew, selfHeatingRags: true }] },
    about: 'SCREW',
    says: /catch fire/,
  },
};

describe('notices of a sheet', () => {
  it('are none where nothing is amiss', () => {
    const { notices, isComplete } = costSheet(sampleSheet);
    expect([notices, isComplete]).toEqual([[], true]);
  });

  it.each(NOTICE_KINDS)('%s is said once, with what it is about and at which numbers of pieces', (kind) => {
    const { sheet, about, says, at = [1, 5] } = CASES[kind];
    const found = costSheet({ ...sampleSheet, ...sheet }).notices.filter((notice) => notice.kind === kind);
    expect(found[0]).toMatchObject({ about, message: expect.stringMatching(says), quantities: at });
    expect(found[0]?.mend).not.toBe('');
  });

  it('say nothing of what just holds', () => {
    const kinds = (changes: Partial<CostSheetInput>) =>
      costSheet({ ...sampleSheet, ...changes }).notices.map(({ kind }) => kind);
    const least = { code: 'yard', name: 'Invented Yard', currency: 'USD', tax: TAX } as const;
    expect(kinds({ suppliers: [{ ...least, minimumOrder: '41' }] })).toEqual([]);
    expect(kinds({ rates: { ...sampleSheet.rates, priceAgeDays: 151 } })).toEqual([]);
    expect(
      kinds({
        materials: [oakAt({ code: 'OAK-4', leadDays: 14, validTo: '2026-06-01' }), sampleScrew],
        terms: { ...sampleSheet.terms, promisedDate: '2026-06-15' },
      }),
    ).toEqual([]);
  });

  it('mark a sheet with a material that nothing prices as not complete, and cost the rest', () => {
    const whole = costSheet(sampleSheet).columns[0];
    const { columns, isComplete } = costSheet({
      ...sampleSheet,
      materials: [sampleOak, { ...sampleScrew, offers: [] }],
    });
    expect(isComplete).toBe(false);
    expect(columns[0]?.unpriced.map(({ material, field }) => [material.code, field])).toEqual([
      ['SCREW', 'bill.components.0'],
    ]);
    expect(whole?.classes.directMaterials.value.eq(columns[0]?.classes.directMaterials.value ?? 0)).toBe(
      true,
    );
    expect(columns[0]?.classes.boughtIn.value.isZero()).toBe(true);
  });
});
