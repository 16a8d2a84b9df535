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
