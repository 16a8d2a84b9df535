import { exampleWorkshopInput } from '@scantling/contracts';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication();
  await application.database.workshop.create({
    data: { name: 'Invented joinery', currency: 'EUR', settings: {} },
  });
});
afterAll(() => application.close());

it('starts with common practice and is changed as a whole', async () => {
  const { request, as } = application;
  const before = await request.get('/api/workshop').set(as('read-only')).expect(200);
  expect(before.body.settings.forms['rough-lumber'].lengthAllowance).toBe('25');
  const changed = {
    ...exampleWorkshopInput,
    unitSystem: 'imperial',
    settings: {
      kerf: '3.2',
      workshopOverhead: {
        base: 'machine-hours',
        plannedBase: '900',
        actual: { amount: '8000', base: '850' },
      },
    },
  };
  const after = await request
    .put('/api/workshop')
    .set({ ...as('maker'), 'if-match': before.headers.etag })
    .send(changed)
    .expect(200);
  expect(after.body).toMatchObject({ unitSystem: 'imperial', version: 2, settings: changed.settings });
  expect(after.headers.etag).toBe('"2"');
  await request
    .put('/api/workshop')
    .set({ ...as('maker'), 'if-match': before.headers.etag })
    .send(changed)
    .expect(412);
  await request.put('/api/workshop').set(as('maker')).send(changed).expect(428);
  await request
    .put('/api/workshop')
    .set({ ...as('bookkeeper'), 'if-match': '"2"' })
    .send(changed)
    .expect(403);
});

it('names the setting that is wrong', async () => {
  const { request, as } = application;
  const form = {
    lengthAllowance: '-1',
    widthAllowance: '0',
    thicknessAllowance: '0',
    yieldFactor: '0',
    offcutValueShare: '0',
  };
  const { body } = await request
    .put('/api/workshop')
    .set({ ...as('owner'), 'if-match': '"2"' })
    .send({ ...exampleWorkshopInput, settings: { forms: { sheet: form } } })
    .expect(422);
  expect(body.errors.map((error: { field: string }) => error.field)).toEqual([
    'settings.forms.sheet.lengthAllowance',
    'settings.forms.sheet.yieldFactor',
  ]);
});

it('takes letterhead and quoting, and names what is wrong with them', async () => {
  const { request, as } = application;
  const { settings } = exampleWorkshopInput;
  const send = async (changed: object) => {
    const { headers } = await request.get('/api/workshop').set(as('maker'));
    const body = { ...exampleWorkshopInput, settings: { ...settings, ...changed } };
    const put = request.put('/api/workshop').set({ ...as('maker'), 'if-match': headers.etag });
    return put.send(body);
  };
  const letterhead = { ...settings.letterhead, tradingName: 'Invented & Sons', paperSize: 'letter' };
  const kept = await send({ letterhead });
  expect([kept.status, kept.body.settings.letterhead]).toEqual([200, letterhead]);
  const logo = { sha256: '0'.repeat(64), alternativeText: 'A mark' };
  const wrong = await send({ letterhead: { ...letterhead, logo } });
  expect([wrong.status, wrong.body.errors[0].field]).toEqual([422, 'settings.letterhead.logo']);
  const numberPatterns = { ...settings.quoting.numberPatterns, quote: 'Q' };
  const uncounted = await send({ quoting: { ...settings.quoting, numberPatterns } });
  expect(uncounted.body.errors[0]).toMatchObject({
    field: 'settings.quoting.numberPatterns.quote',
    message: 'has no counter',
  });
});
