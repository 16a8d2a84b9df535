import { afterAll, beforeAll, expect, it } from 'vitest';
import { type QuotingWorkshop, startQuotingWorkshop } from '../../../../../tests/api/quoting-workshop.ts';
import { readConfig } from '../../config.ts';
import { costDemoCommission } from './cost-demo-commission.ts';

let test: QuotingWorkshop;
beforeAll(async () => {
  test = await startQuotingWorkshop();
});
afterAll(() => test.close());

it('says at the start what the commission comes to, and that it is too low where a price is missing', async () => {
  const { database, costSheetId: id } = test;
  const summary = async () => {
    const lines = await costDemoCommission.run({ config: readConfig({}), database });
    return lines.join('\n');
  };
  await database.costSheet.update({ where: { id }, data: { isDemo: true } });
  expect(await summary()).toContain('cost of production');
  expect(await summary()).not.toContain('too low');

  // Before the only price list begins.
  await database.costSheet.update({ where: { id }, data: { onDate: new Date('2020-01-01') } });
  const low = await summary();
  expect(low).toContain('Not complete: cost and price are too low.');
  expect(low).toContain('Ash 4/4 (ASH-4) is not in the cost');
  expect(low).toContain('import or enter a price for it');
});
