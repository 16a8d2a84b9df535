import { leafHome } from '@scantling/contracts';
import { leafEntry } from '@scantling/costing';
import type { FigureNode } from '@scantling/figures';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { readConfig } from '../../config.ts';
import { loadDemo } from '../demo/load-demo.ts';

const now = new Date('2026-11-25T10:00:00Z');
const MOST_AT_ONCE = 300;

let test: TestApplication;
beforeAll(async () => {
  test = await startTestApplication({ clock: () => now });
  await loadDemo(test.database, { clock: () => now, config: readConfig({}) });
});
afterAll(() => test.close());

it('every leaf of a whole sheet with a home is taken by the record it names, and comes to the same price', async () => {
  const sheet = await test.database.costSheet.findFirstOrThrow({ orderBy: { createdAt: 'asc' } });
  const { body } = await test.request
    .get(`/api/cost-sheets/${sheet.id}/figures?working=true`)
    .set(test.as('maker'));
  const leaves = Object.values<FigureNode>(body.figures).filter(({ id, unit, source }) => {
    const entry = source === undefined ? null : leafEntry({ id, unit, source });
    return entry !== null && leafHome(id).kind !== 'nowhere';
  });
  expect(new Set(leaves.map(({ id }) => leafHome(id).kind)).size).toBeGreaterThan(7);
  for (let from = 0; from < leaves.length; from += MOST_AT_ONCE) {
    const changes = leaves
      .slice(from, from + MOST_AT_ONCE)
      // The sheet's choice of a variant sets some parameters, which only it can change.
      .map(({ id, value }) => ({
        leaf: id,
        value,
        reach: leafHome(id).kind === 'design-parameter' ? 'here' : 'everywhere',
      }));
    const foreseen = await test.request
      .post(`/api/cost-sheets/${sheet.id}/changes/preview`)
      .set(test.as('maker'))
      .send({ changes });
    expect([foreseen.status, foreseen.body.errors]).toEqual([200, undefined]);
    for (const { results } of foreseen.body.columns)
      for (const { was, now: after } of results) expect(after).toBe(was);
  }
});
