import { readFileSync } from 'node:fs';
import { machineHourRate } from '@scantling/contracts';
import { type FigureTable, OPERATIONS, recalculate } from '@scantling/figures';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../tests/api/application.ts';

const PAGE = readFileSync(new URL('../../../../docs/figures.md', import.meta.url), 'utf8');

let test: TestApplication;
let takes: ValidateFunction;

beforeAll(async () => {
  test = await startTestApplication();
  const { body } = await test.request.get('/api/schemas/figures.json').expect(200);
  // Another reader of JSON Schema than the one that wrote it.
  takes = new Ajv2020({ allErrors: true }).compile(body);
});
afterAll(() => test.close());

function exampleOf(page: string): FigureTable {
  const [, text = ''] = /```json\n([\s\S]*?)\n```/.exec(page) ?? [];
  return JSON.parse(text);
}

describe('the form of figures', () => {
  it('is served as a JSON Schema of 2020-12 that names itself', async () => {
    const { body } = await test.request
      .get('/api/schemas/figures.json')
      .expect(200)
      .expect('content-type', /application\/schema\+json/);
    expect(body).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $id: '/api/schemas/figures.json',
    });
  });

  it('takes the example of its page, which comes to its own values when worked out from the leaves', () => {
    const table = exampleOf(PAGE);
    takes(table);
    expect(takes.errors).toBeNull();
    const leaves = Object.fromEntries(
      Object.values(table).flatMap(({ id, how, value }) => (how === undefined ? [[id, value]] : [])),
    );
    const again = recalculate(table, leaves);
    for (const { id, value } of Object.values(table)) expect(again.get(id)?.toString()).toBe(value);
    // 23.4 / 0.72 x 7.80, by hand.
    expect(table.oak?.value).toBe('253.5');
    expect(recalculate(table, { 'price/oak': '8' }).get('oak')?.toString()).toBe('260');
  });

  it('takes what the API answers, with derivations and without', async () => {
    for (const working of ['true', 'false']) {
      const { body } = await test.request
        .post(`${machineHourRate.path}?working=${working}`)
        .set(test.as('read-only'))
        .send(machineHourRate.body.parse(machineHourRate.example.body))
        .expect(200);
      expect(Object.values(body.figures).some((node) => Object.hasOwn(Object(node), 'how'))).toBe(
        working === 'true',
      );
      takes(body.figures);
      expect(takes.errors).toBeNull();
    }
  });

  it.each([
    ['a number for a text', { value: 23.4 }],
    ['a unit nobody knows', { unit: 'fathom' }],
    ['a source of no kind', { source: { kind: 'rumour', text: 'heard' } }],
    ['a field it does not have', { colour: 'green' }],
  ])('refuses %s', (_, fault) => {
    const table = exampleOf(PAGE);
    expect(takes({ ...table, 'bill/oak/need': { ...table['bill/oak/need'], ...fault } })).toBe(false);
  });

  it('has every operation and every field on its page', () => {
    const fields = ['id', 'label', 'unit', 'currency', 'value', 'note', 'how', 'source', 'bounds'];
    const missing = [...Object.keys(OPERATIONS), ...fields].filter((name) => !PAGE.includes(`| \`${name}\``));
    expect(missing).toEqual([]);
  });
});
