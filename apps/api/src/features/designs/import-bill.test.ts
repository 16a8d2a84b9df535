import { EMPTY_BILL } from '@scantling/costing';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';

let api: TestApplication;
let design: { id: string; version: number };

beforeAll(async () => {
  api = await startTestApplication();
  for (const code of ['ASH', 'PAD'])
    await api.request
      .post('/api/materials')
      .set(api.as('maker'))
      .send({ code, name: code, form: 'each' })
      .expect(201);
  const made = await api.request
    .post('/api/designs')
    .set(api.as('maker'))
    .send({ code: 'stool', name: 'Invented stool', description: '', unitSystem: 'metric', bill: EMPTY_BILL })
    .expect(201);
  design = made.body;
});

afterAll(() => api.close());

async function send(text: string, query: Record<string, string> = {}) {
  const { body } = await api.request
    .post(`/api/designs/${design.id}/bill-file`)
    .query(query)
    .set({ ...api.as('maker'), 'If-Match': `"${design.version}"` })
    .attach('file', Buffer.from(text), 'bill.csv')
    .expect(200);
  return body;
}

const preview = (text: string, mapping?: object) =>
  send(text, { preview: 'true', ...(mapping === undefined ? {} : { mapping: JSON.stringify(mapping) }) });

const PARTS = [
  'Teil;Bauteil;Stück;Holz;lang;breit;dick',
  'L1;Leg;4;ASH;430,5;45;45',
  'T1;Top;1;OAK;60cm;300;25',
];
const MAPPING = {
  columns: {
    id: 'Teil',
    name: 'Bauteil',
    quantity: 'Stück',
    material: 'Holz',
    length: 'lang',
    width: 'breit',
    thickness: 'dick',
  },
  rowKind: 'part',
};

describe('a bill from a file whose headers are another program’s', () => {
  it('asks which column is which, and changes nothing', async () => {
    const read = await preview(PARTS.join('\n'));
    expect(read).toMatchObject({
      bill: null,
      problems: [],
      headers: ['Teil', 'Bauteil', 'Stück', 'Holz', 'lang', 'breit', 'dick'],
      missingColumns: ['row', 'id', 'name'],
      isApplied: false,
    });
  });

  it('names line, column and mend of what cannot be used, unknown codes too', async () => {
    const read = await preview(PARTS.join('\n'), MAPPING);
    expect(read.missingColumns).toEqual([]);
    expect(read.bill).toBeNull();
    expect(read.problems).toEqual([
      {
        line: 3,
        column: 'material',
        message: 'there is no material "OAK"',
        mend: 'enter the material first, or correct the code',
      },
    ]);
  });

  it('remembers the columns, finds the headers below a title, and takes the bill whole', async () => {
    const mended = ['Stool, sheet 1', '', ...PARTS].join('\n').replace('OAK', 'ASH');
    const read = await preview(mended);
    expect(read.problems).toEqual([]);
    expect(read.mapping).toEqual(MAPPING);
    expect(read.bill.parts.map(({ id, length }: { id: string; length: string }) => [id, length])).toEqual([
      ['L1', '430.5'],
      ['T1', '600'],
    ]);
    expect(await api.database.designRevision.count({ where: { designId: design.id } })).toBe(1);
    const taken = await send(mended);
    expect(taken).toMatchObject({ isApplied: true, version: design.version + 1 });
    design.version = taken.version;
  });

  it('still reads its own files, and says which field a broken mapping is', async () => {
    const own = await preview('row,id,name,quantity,material\ncomponent,pad,Foot pad,4,PAD\n');
    expect(own.bill.components).toEqual([{ id: 'pad', name: 'Foot pad', quantity: '4', material: 'PAD' }]);
    const refused = await api.request
      .post(`/api/designs/${design.id}/bill-file`)
      .query({ preview: 'true', mapping: '{' })
      .set({ ...api.as('maker'), 'If-Match': `"${design.version}"` })
      .attach('file', Buffer.from('x'), 'bill.csv')
      .expect(422);
    expect(refused.body.errors[0].field).toContain('mapping');
  });
});
