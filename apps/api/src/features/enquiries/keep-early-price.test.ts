import { exampleEarlyPriceInput, exampleEnquiryInput, exampleWorkshopInput } from '@scantling/contracts';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';

let application: TestApplication;
let enquiryId: string;

beforeAll(async () => {
  application = await startTestApplication();
  await application.database.workshop.create({ data: { id: 1, ...exampleWorkshopInput } });
  const answer = await application.request
    .post('/api/enquiries')
    .set(application.as('maker'))
    .send(exampleEnquiryInput);
  enquiryId = answer.body.id;
});
afterAll(() => application.close());

const [PIECE] = exampleEarlyPriceInput.pieces;
const VAST = { length: '999999', width: '999999', height: '999999' };
const STEEP = { materials: { basis: 'volume', exponent: '2' }, labour: { basis: 'volume', exponent: '2' } };

it.each([
  ['an amount in another writing', { pieces: [{ ...PIECE, materials: '1e9' }] }, 'input.pieces.0.materials'],
  ['an amount below 0', { pieces: [{ ...PIECE, materials: '-620' }] }, 'input.pieces.0.materials'],
  ['more hours than a life has', { asked: { hours: '1000000000' } }, 'input.asked.hours'],
  [
    'a size of more than a kilometre',
    { asked: { size: { ...VAST, length: '1000000' } } },
    'input.asked.size.length',
  ],
  [
    'a factor out of all measure',
    { adjustment: { factor: '99999', reason: 'x' } },
    'input.adjustment.factor',
  ],
  ['a past piece twice', { pieces: [PIECE, PIECE] }, 'input.pieces.1.id'],
  ['what comes to more than can be kept', { asked: { size: VAST }, scaling: STEEP }, 'input.asked'],
])('%s is refused at its field, and nothing is kept', async (_what, change, field) => {
  const answer = await application.request
    .post(`/api/enquiries/${enquiryId}/early-prices`)
    .set(application.as('maker'))
    .send({ input: { ...exampleEarlyPriceInput, ...change }, note: '' });
  expect([answer.status, answer.body.errors[0]?.field]).toEqual([422, field]);
  expect(answer.body.errors[0].mend).not.toBe('');
  expect(await application.database.enquiryEarlyPrice.count()).toBe(0);
});
