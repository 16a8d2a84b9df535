import { exampleSheetInput } from '@scantling/contracts';
import { recalculate } from '@scantling/figures';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { enterShelfShop } from '../../../../../tests/api/shelf-shop.ts';

const formula = (text: string) => ({ formula: text });
const PART = {
  id: 'shelf',
  name: 'Shelf',
  quantity: formula('shelves'),
  material: 'wood',
  length: formula('length - 2 * 20'),
  width: '180',
  thickness: '19',
  grain: 'length',
  facesFinished: 'all',
};
const DESIGN = {
  code: 'RACK',
  name: 'Rack',
  description: '',
  unitSystem: 'metric',
  bill: { assemblies: [], parts: [PART], components: [], finishes: [], consumables: [], operations: [] },
  parameters: [
    { id: 'length', label: 'Length', kind: 'length', value: '840', least: '300', greatest: '2400' },
    { id: 'shelves', label: 'Shelves', kind: 'count', value: '2' },
    { id: 'wood', label: 'Wood', kind: 'material', value: 'ASH-4', choices: ['ASH-4', 'OAK-4'] },
  ],
  variants: [{ id: 'long', name: 'Long', values: { length: '1200', wood: 'OAK-4' } }],
};

let test: TestApplication;
let id = '';

beforeAll(async () => {
  test = await startTestApplication();
  await enterShelfShop(test.database);
  const made = await create('rack', DESIGN);
  expect(made.status).toBe(201);
  id = made.body.id;
});
afterAll(() => test.close());

const create = (key: string, body: object) =>
  test.request
    .post('/api/designs')
    .set({ ...test.as('maker'), 'idempotency-key': key })
    .send(body);
const read = async () => (await test.request.get(`/api/designs/${id}`).set(test.as('read-only'))).body;
const edit = async (changes: object) => {
  const { bill, code, name, description, unitSystem, version } = await read();
  return test.request
    .put(`/api/designs/${id}`)
    .set({ ...test.as('maker'), 'if-match': `"${version}"` })
    .send({ bill, code, name, description, unitSystem, ...changes });
};
const fieldsOf = (body: { errors: { field: string }[] }) => body.errors.map(({ field }) => field);

describe('a design with parameters', () => {
  it('keeps them, and an edit that leaves them out leaves them as they are', async () => {
    const { body, status } = await edit({ name: 'Rack of shelves' });
    expect(status).toBe(200);
    expect(body).toMatchObject({ parameters: DESIGN.parameters, variants: DESIGN.variants, version: 2 });
  });

  it('is refused with every field that cannot be worked out, drawn or in a variant', async () => {
    const part = { ...PART, length: formula('lenght'), width: formula('length * length'), material: 'elm' };
    const wrong = await create('wrong', {
      ...DESIGN,
      code: 'WRONG',
      bill: { ...DESIGN.bill, parts: [part] },
    });
    expect([wrong.status, fieldsOf(wrong.body)]).toEqual([
      422,
      ['bill.parts.0.material', 'bill.parts.0.length', 'bill.parts.0.width'],
    ]);
    const short = await edit({
      variants: [{ id: 'short', name: 'Short', values: { length: '20', wood: 'X' } }],
    });
    expect([short.status, fieldsOf(short.body)]).toEqual([
      422,
      ['variants.0.values.wood', 'variants.0.values.length', 'variants.0.values.wood'],
    ]);
    const odd = await create('odd', {
      ...DESIGN,
      code: 'ODD',
      bill: { ...DESIGN.bill, parts: [{ ...PART, length: formula('1'.repeat(401)) }] },
    });
    expect([odd.status, fieldsOf(odd.body)]).toEqual([422, ['bill.parts.0.length.formula']]);
    expect(await test.database.design.count()).toBe(1);
  });

  it('does not change its unit under formulas that hold bare lengths', async () => {
    const refused = await edit({ unitSystem: 'imperial' });
    expect([refused.status, fieldsOf(refused.body)]).toEqual([422, ['unitSystem']]);
    expect(refused.body.errors[0].mend).toContain('mm(40)');
  });

  it('comes back unchanged from its file, and a file without parameters keeps those there are', async () => {
    const before = await read();
    const file = await test.request.get(`/api/designs/${id}/bill-file?format=csv`).set(test.as('read-only'));
    const send = (content: string, version: number) =>
      test.request
        .post(`/api/designs/${id}/bill-file`)
        .set({ ...test.as('maker'), 'if-match': `"${version}"` })
        .attach('file', Buffer.from(content), 'bill.csv');
    const again = await send(file.text, before.version);
    expect(again.body).toMatchObject({
      problems: [],
      bill: before.bill,
      parameters: before.parameters,
      variants: before.variants,
    });
    const plain = await send(
      'row,id,name,quantity,material,length,width,thickness\r\npart,shelf,Shelf,=shelves,wood,=length,180,19',
      again.body.version,
    );
    expect(plain.body).toMatchObject({ isApplied: true, parameters: before.parameters });
    const { status } = await edit({ bill: before.bill });
    expect(status).toBe(200);
  });
});

describe('a cost sheet of a design with parameters', () => {
  const asked = (choice: object) => ({
    title: 'Rack',
    designId: id,
    clientId: null,
    basis: 'shop',
    onDate: '2026-03-01',
    quantities: [1],
    terms: exampleSheetInput.terms,
    ...choice,
  });
  const make = (key: string, choice: object) =>
    test.request
      .post('/api/cost-sheets')
      .set({ ...test.as('maker'), 'idempotency-key': key })
      .send(asked(choice));
  const priceOf = (body: {
    columns: { price: { netPrice: string } }[];
    figures: Record<string, { value: string }>;
  }) => Number(body.figures[body.columns[0]?.price.netPrice ?? '']?.value);

  it('costs the variant and the values chosen, and shows the parameter behind every size', async () => {
    const made = await make('long', { variant: 'long', parameterValues: { length: '1350' } });
    expect(made.body).toMatchObject({ variant: 'long', parameterValues: { length: '1350' }, revision: null });
    const worked = await test.request
      .get(`/api/cost-sheets/${made.body.id}/figures?working=true`)
      .set(test.as('read-only'));
    expect(worked.status).toBe(200);
    const { figures, parameters, materials } = { ...worked.body, ...worked.body.columns[0] };
    expect(parameters.map((one: { value: string | null; material: string | null }) => one)).toMatchObject([
      { id: 'length', value: 'parameter/length', material: null, drawn: '840' },
      { id: 'shelves', value: 'parameter/shelves', drawn: '2' },
      { id: 'wood', value: null, material: 'OAK-4', drawn: 'ASH-4' },
    ]);
    expect(materials[0].code).toBe('OAK-4');
    const face = figures[worked.body.parts[0].roughLength];
    // 1350 less two sides of 20, and the shop's 25 mm allowance.
    expect(Number(face.value)).toBe(1335);
    const values = recalculate(figures, { 'parameter/length': '840' });
    expect(values.get(worked.body.parts[0].roughLength)?.toString()).toBe('825');
  });

  it('is tried with other choices, and nothing is stored', async () => {
    const { body: sheet } = await make('tried', {});
    const attempt = (choice: object) =>
      test.request.post(`/api/cost-sheets/${sheet.id}/figures`).set(test.as('read-only')).send(choice);
    const [drawn, longer, more] = await Promise.all([
      attempt({}),
      attempt({ parameterValues: { length: '990' } }),
      attempt({ parameterValues: { shelves: '3' } }),
    ]);
    expect(priceOf(longer.body)).toBeGreaterThan(priceOf(drawn.body));
    expect(priceOf(more.body)).toBeGreaterThan(priceOf(longer.body));
    const wrong = await attempt({ parameterValues: { length: '9000' } });
    expect([wrong.status, fieldsOf(wrong.body)]).toEqual([422, ['parameterValues.length']]);
    const after = await test.request.get(`/api/cost-sheets/${sheet.id}`).set(test.as('read-only'));
    expect(after.body.version).toBe(1);
  });

  it('is refused where the design takes no such choice', async () => {
    const refused = async (key: string, choice: object) => fieldsOf((await make(key, choice)).body);
    expect(await refused('a', { variant: 'tall' })).toEqual(['variant']);
    expect(await refused('b', { parameterValues: { depth: '1' } })).toEqual(['parameterValues.depth']);
    expect(await refused('c', { revision: 99 })).toEqual(['revision']);
  });

  it('follows the newest revision, or stays with the one it is pinned to', async () => {
    const { version } = await read();
    const [following, pinned] = await Promise.all([make('f', {}), make('p', { revision: version })]);
    const before = await read();
    const [part] = before.bill.parts;
    const wider = await edit({ bill: { ...before.bill, parts: [{ ...part, width: '360' }] } });
    expect(wider.status).toBe(200);
    const figuresOf = async (sheet: string) =>
      (await test.request.get(`/api/cost-sheets/${sheet}/figures`).set(test.as('read-only'))).body;
    const [now, then] = await Promise.all([figuresOf(following.body.id), figuresOf(pinned.body.id)]);
    expect(priceOf(now)).toBeGreaterThan(priceOf(then));
    const again = await test.request.get(`/api/cost-sheets/${pinned.body.id}`).set(test.as('read-only'));
    expect(again.body).toMatchObject({ revision: version, newestRevision: version + 1 });
  });
});
