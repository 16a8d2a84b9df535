import { exampleSheetInput, toWorkedCostSheet } from '@scantling/contracts';
import { costSheet } from '@scantling/costing';
import { describe, expect, it } from 'vitest';
import { foundInputs, inputGroups } from './input-groups.ts';

const { figures } = toWorkedCostSheet(costSheet(exampleSheetInput), { withDerivations: true });
const groups = inputGroups(figures);

describe('the inputs of a sheet', () => {
  it('stand once each, by where they come from, and say what is of the whole shop', () => {
    const ids = groups.flatMap(({ leaves }) => leaves.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    const titles = groups.map(({ title, isShopWide }) => `${title}${isShopWide ? ' *' : ''}`);
    expect(titles).toEqual([
      'Terms of this sheet',
      'Bill of materials',
      'Prices *',
      'Labour *',
      'Materials *',
      'Workshop and overhead *',
    ]);
    expect(ids).not.toContain('quantity/1');
  });

  it('are found by any words of name and source', () => {
    const found = foundInputs(groups, 'owner PAY');
    expect(found.flatMap(({ leaves }) => leaves.map(({ id }) => id))).toContain('labour/owner/pay-per-hour');
    expect(found.length).toBeLessThan(groups.length);
    expect(foundInputs(groups, 'no such input')).toEqual([]);
    expect(foundInputs(groups, ' ')).toEqual(groups);
  });
});
