import { exampleFigures } from '@scantling/contracts';
import { recalculate } from '@scantling/figures';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from './application.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication();
});
afterAll(() => application.close());

const post = (name: string, body: object) =>
  application.request.post(`/api/calculations/${name}`).set(application.as('read-only')).send(body);
const leaf = (id: string, value = '1') => ({
  id,
  label: id,
  unit: 'ratio',
  currency: null,
  value,
  source: { kind: 'entered', text: 'test' },
});
const derived = (id: string, operation: string, ...inputs: string[]) => ({
  id,
  label: id,
  unit: 'ratio',
  currency: null,
  value: '0',
  how: { operation, inputs },
});
const tableOf = (...nodes: { id: string }[]) => Object.fromEntries(nodes.map((node) => [node.id, node]));

describe('what if', () => {
  it('answers what moves, by how much, as the whole table worked out anew has it', async () => {
    const { body } = await post('what-if', {
      figures: exampleFigures,
      changes: { 'ash/price': '13.5' },
    }).expect(200);
    const value = (id: string) => body.figures[id].value;
    const again = recalculate(exampleFigures, { 'ash/price': '13.5' });
    expect(body.moved.map(({ before }: { before: string }) => before)).toContain('price');
    for (const { before, after, by } of body.moved) {
      expect(value(after)).toBe(again.get(before)?.toString());
      expect(value(before)).toBe(exampleFigures[before]?.value);
      expect(Number(value(by))).toBeCloseTo(Number(value(after)) - Number(value(before)), 12);
    }
    // By hand: six boards at 1.50 more each, and the markup of 30 % on it.
    const [price] = body.moved.filter(({ before }: { before: string }) => before === 'price');
    expect(value(price.by)).toBe('11.7');
  });

  it('names what has no answer and answers the rest', async () => {
    const figures = tableOf(
      leaf('a', '6'),
      leaf('b', '2'),
      derived('q', 'quotient', 'a', 'b'),
      derived('s', 'sum', 'a', 'b'),
    );
    const { body } = await post('what-if', { figures, changes: { b: '0' } }).expect(200);
    expect(body.faults).toEqual([{ id: 'q', label: 'q', reason: 'q: nothing can be divided by 0' }]);
    expect(body.lost).toEqual([{ before: 'q' }]);
    expect(body.figures[body.moved.at(-1).after].value).toBe('6');
  });
});

describe('sensitivity', () => {
  it('orders what moves the price', async () => {
    const { body } = await post('sensitivity', { figures: exampleFigures, result: 'price', most: 2 }).expect(
      200,
    );
    const [pay, time] = body.rows;
    // By hand: 38 x 8.5 = 323 of 395; a tenth of it with the markup of 30 %, either way, is 83.98.
    expect(body.figures[pay.swing]).toMatchObject({
      value: '83.98',
      currency: 'EUR',
      how: { operation: 'difference' },
    });
    expect([body.figures[time.swing].value, body.rows.length]).toEqual(['83.98', 2]);
    expect(body.more).toBeGreaterThan(0);
    const wide = await post('sensitivity', {
      figures: exampleFigures,
      result: 'price',
      usesThreePoints: true,
    });
    const [first] = wide.body.rows;
    // Five to fourteen hours: 9 x 38 x 1.3.
    expect([first.by, wide.body.figures[first.swing].value]).toEqual(['range', '444.6']);
  });
});

describe('solving', () => {
  it('answers with the value and what is left', async () => {
    const asked = { figures: exampleFigures, result: 'cost', leaf: 'pay', target: { value: '480' } };
    const { body } = await post('solve', asked).expect(200);
    const [{ at }] = body.crossings;
    expect(body.figures[at.value]).toMatchObject({ value: '48', unit: 'money/h', currency: 'EUR' });
    expect(body.figures[at.residual]).toMatchObject({ value: '0', how: { operation: 'difference' } });
    expect(body.why).toBeNull();
    const never = await post('solve', { ...asked, target: { value: '10' } }).expect(200);
    expect([never.body.crossings, never.body.why, never.body.course]).toEqual([[], 'never-reaches', 'rises']);
    expect(never.body.figures[never.body.least.result].value).toBe('72');
  });
});

describe('risk', () => {
  const uncertain = { 'ash/price': { low: '11', likely: '12', high: '16' } };
  const asked = {
    figures: exampleFigures,
    results: ['cost'],
    uncertain,
    quoted: { cost: 'cost', price: '450', leastMargin: '0.1' },
  };

  it('answers with spread, contingency and chances, the same for the same seed', async () => {
    const { body } = await post('risk', asked).expect(200);
    const number = (id: string) => Number(body.figures[id].value);
    const [cost] = body.results;
    // By hand: 8.5 h at 38 and six boards at (11 + 48 + 16) / 6 = 12.50 are 398. Variances (mu - a)(b - mu) / 7:
    // 38^2 x 3.5 x 5.5 / 7 + 6^2 x 1.5 x 3.5 / 7 = 3998.
    expect(number(cost.atMeans)).toBe(398);
    expect(Math.abs(number(cost.spread.mean) - 398)).toBeLessThan(2.6);
    expect(Math.abs(number(cost.spread.sd) - Math.sqrt(3998))).toBeLessThan(2.5);
    expect(body.figures[cost.contingency]).toMatchObject({
      currency: 'EUR',
      how: { operation: 'difference', inputs: [cost.spread.percentile, cost.atMeans] },
    });
    expect(number(cost.contingency)).toBeCloseTo(number(cost.spread.p80) - 398, 9);
    expect(cost.shares[0]).toMatchObject({ name: 'hours', isGroup: true });
    expect(cost.spread.histogram.edges.length).toBe(cost.spread.histogram.counts.length + 1);
    // A margin of a tenth at 450 is a cost of 405 at most.
    expect(number(body.chances.ofLowMargin)).toBeGreaterThan(number(body.chances.ofLoss));
    expect(body.uncertain.map(({ group }: { group: string | null }) => group)).toEqual([null, 'hours']);
    const again = recalculate(body.figures);
    for (const { mean } of body.uncertain) expect(again.get(mean)?.toString()).toBe(body.figures[mean].value);
    expect((await post('risk', asked)).body).toEqual(body);
    expect((await post('risk', { ...asked, seed: 2 })).body.results).not.toEqual(body.results);
  });

  it('names the estimate that cannot be used', async () => {
    const errorsOf = async (given: object) =>
      (await post('risk', { ...asked, ...given }).expect(422)).body.errors;
    const three = (low: string, likely: string, high: string) => ({ low, likely, high });
    expect(await errorsOf({ uncertain: { pay: three('3', '2', '4') } })).toEqual([
      expect.objectContaining({
        field: 'uncertain.pay',
        mend: 'give the least, the likely and the greatest value in this order',
      }),
    ]);
    expect((await errorsOf({ uncertain: { 'work/likely': three('1', '2', '3') } }))[0].field).toBe(
      'uncertain.work/likely',
    );
    expect((await errorsOf({ samples: 100_001 }))[0].field).toBe('samples');
    expect((await errorsOf({ uncertain: {}, usesThreePoints: false }))[0].field).toBe('uncertain');
  });
});

describe('a hostile table', () => {
  const asked = (figures: object) => post('sensitivity', { figures, result: 'r' });
  const codeOf = async (figures: object) => {
    const { status, body } = await asked(figures);
    return [status, body.code, body.errors?.[0]?.field];
  };

  it('is refused by what is wrong with it', async () => {
    expect(await codeOf(tableOf(derived('r', 'sum', 'b'), derived('b', 'sum', 'r')))).toEqual([
      422,
      'figure-table',
      'figures.r',
    ]);
    expect(await codeOf(tableOf(derived('r', 'sum', 'gone')))).toEqual([422, 'unknown-figure', undefined]);
    expect((await codeOf(tableOf(leaf('a'), derived('r', 'guess', 'a'))))[0]).toBe(422);
    expect(await codeOf(tableOf(leaf('a'), derived('r', 'quotient', 'a')))).toEqual([
      422,
      'figure-table',
      'figures.r',
    ]);
    expect((await codeOf(tableOf(leaf('r', '1e999999999'))))[0]).toBe(422);
    expect((await codeOf(tableOf(leaf('a'))))[1]).toBe('unknown-figure');
    expect((await codeOf({ r: { ...leaf('r'), id: 'other' } }))[1]).toBe('figure-table');
    expect((await codeOf({ r: 3 }))[0]).toBe(422);
  });

  it('of more figures than are taken is refused at once', async () => {
    const many = tableOf(...Array.from({ length: 100_000 }, (_, at) => ({ id: `${at}` })));
    const { status, body } = await asked(many);
    expect([status, body.errors.length, body.errors[0].message]).toEqual([
      422,
      1,
      'holds more than 20000 figures',
    ]);
  });

  it('whose powers tower up, or whose work would never end, is answered in time', async () => {
    const tower = Array.from({ length: 200 }, (_, at) => derived(`p${at + 1}`, 'power', `p${at}`, 'x'));
    const towering = await asked(
      tableOf(leaf('p0', '9'), leaf('x', '9999'), ...tower, derived('r', 'sum', 'p200')),
    );
    expect(towering.status).toBe(200);
    const chain = Array.from({ length: 9000 }, (_, at) => derived(`c${at + 1}`, 'sum', `c${at}`, `l${at}`));
    const leaves = Array.from({ length: 9000 }, (_, at) => leaf(`l${at}`));
    const long = await asked(tableOf(leaf('c0'), ...leaves, ...chain, derived('r', 'sum', 'c9000')));
    expect([long.status, long.body.code]).toEqual([422, 'too-much-work']);
  });
});
