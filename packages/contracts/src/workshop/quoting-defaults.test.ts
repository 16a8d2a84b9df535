import { describe, expect, it } from 'vitest';
import { quotingDefaultsSchema } from './quoting-defaults.ts';
import { TAX_CATEGORY_CODES, taxCategorySchema } from './tax-categories.ts';

const faultsOf = (given: object) =>
  quotingDefaultsSchema
    .safeParse(given)
    .error?.issues.map(({ path, message }) => `${path.join('.')} ${message}`);
const category = (changed: object) => ({
  id: 'x',
  name: 'X',
  category: 'S',
  rate: '0.2',
  exemptionReason: '',
  ...changed,
});

describe('what a quote starts with', () => {
  it('is whole where nothing is said', () => {
    const { depositShares, numberPatterns, taxCategories } = quotingDefaultsSchema.parse({});
    expect([depositShares[0]?.share, numberPatterns.quote, taxCategories.length]).toEqual([
      '0.5',
      'Q-{year}-{0000}',
      1,
    ]);
  });

  it('takes deposits of the whole and refuses more', () => {
    const half = { label: 'Half', share: '0.5' };
    expect(faultsOf({ depositShares: [half, half] })).toBeUndefined();
    expect(faultsOf({ depositShares: [half, half, { label: 'More', share: '0.000001' }] })).toEqual([
      'depositShares are more than the whole together',
    ]);
    expect(faultsOf({ depositShares: [{ label: 'All', share: '1.2' }] })).toEqual([
      'depositShares.0.share is not a share from 0 to 1',
    ]);
  });
});

describe('a tax category', () => {
  // EN 16931-1, business rules BR-S-05, BR-Z-05, BR-E-05, BR-AE-05, BR-IC-05, BR-G-05 (rates), and
  // BR-S-10, BR-Z-10, BR-E-10, BR-AE-10, BR-IC-10, BR-G-10, BR-O-10 (exemption reasons); from memory.
  it.each(TAX_CATEGORY_CODES)('%s has the rate and reason that EN 16931 asks for', (code) => {
    const isTaken = (rate: string, exemptionReason: string) =>
      taxCategorySchema.safeParse(category({ category: code, rate, exemptionReason })).success;
    expect(isTaken('0.2', '')).toBe(code === 'S');
    expect(isTaken('0', '')).toBe(code === 'Z');
    expect(isTaken('0', 'because')).toBe(code !== 'S' && code !== 'Z');
    expect(isTaken('0.2', 'because')).toBe(false);
  });

  it('has an id of its own', () => {
    expect(faultsOf({ taxCategories: [category({}), category({ name: 'Y' })] })).toEqual([
      'taxCategories.1.id "x" names another category already',
    ]);
    expect(faultsOf({ taxCategories: [] })?.length).toBe(1);
  });
});
