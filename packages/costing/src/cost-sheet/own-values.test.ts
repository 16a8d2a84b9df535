import { decimal } from '@scantling/decimals';
import { type Figure, leaves, recalculate, toTable } from '@scantling/figures';
import { describe, expect, it } from 'vitest';
import { costSheet } from './cost-sheet.ts';
import { leafEntry } from './leaf-entry.ts';
import { sampleSheet } from './sample-sheet.ts';

const own = (leaf: string, value: string) => ({
  leaf,
  label: leaf,
  value,
  by: 'Odalie (invented)',
  on: '2026-06-02',
});

function results(sheet: ReturnType<typeof costSheet>): Record<string, Figure> {
  return Object.fromEntries(
    sheet.columns.flatMap(({ quantity, classes, price, perPiece }) => [
      [`${quantity} cost`, classes.costOfProduction],
      [`${quantity} price`, price.netPrice],
      [`${quantity} piece`, perPiece.price],
      [`${quantity} earnings`, price.hourlyEarnings ?? classes.freight],
    ]),
  );
}

// No outside source: an own value must be what re-calculating the sheet's own figures gives.
describe('an own value of a sheet', () => {
  const plain = results(costSheet(sampleSheet));
  const { figures, ids } = toTable(plain, { withDerivations: true });
  const changeable = leaves(Object.values(plain)).flatMap((leaf) => {
    if (leaf.how.kind !== 'input') return [];
    const { key, source } = leaf.how;
    const entry = leafEntry({ id: key, unit: leaf.unit, source });
    return entry === null || leaf.value.isZero() ? [] : [{ key, leaf, entry }];
  });

  it.each(changeable.map(({ key, leaf, entry }) => [key, leaf, entry] as const))(
    'for %s comes to what re-calculating does',
    (key, leaf, entry) => {
      const value = (entry.as === 'count' ? leaf.value.plus(1) : leaf.value.times('0.9')).toString();
      const sheet = costSheet({ ...sampleSheet, ownValues: [own(key, value)] });
      const expected = recalculate(figures, { [key]: value });
      for (const [name, figure] of Object.entries(results(sheet)))
        expect(figure.value.toString()).toBe(expected.get(ids[name] ?? '')?.toString());
      expect(sheet.notices.filter(({ kind }) => kind === 'own-value-gone')).toEqual([]);
    },
  );

  it('says who gave it, when, and what it stands in for', () => {
    const sheet = costSheet({ ...sampleSheet, ownValues: [own('material/OAK-4/yield', '0.8')] });
    const leaf = leaves(Object.values(results(sheet))).find(
      ({ how }) => how.kind === 'input' && how.key === 'material/OAK-4/yield',
    );
    expect(leaf?.value.eq(decimal('0.8'))).toBe(true);
    expect(leaf?.how).toMatchObject({
      source: {
        kind: 'own-value',
        text: 'entered by Odalie (invented) on 2026-06-02 for this cost sheet, instead of 50 % from material record OAK-4',
        record: 'material:OAK-4',
      },
    });
  });

  it('without an answer is refused with what to take back', () => {
    expect(() => costSheet({ ...sampleSheet, ownValues: [own('material/OAK-4/yield', '0')] })).toThrow(
      /ownValues leave no answer/,
    );
  });
});
