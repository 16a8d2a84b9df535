import { exampleLabourGradeInput } from '@scantling/contracts';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication();
  await application.database.workshop.create({
    data: { name: 'Invented joinery', currency: 'USD', settings: {} },
  });
});
afterAll(() => application.close());

it('keeps grades and works out what an hour costs', async () => {
  const { request, as } = application;
  const driver = {
    ...exampleLabourGradeInput,
    code: 'DRIVER',
    payPerHour: '13.5',
    burden: '0.1',
    productiveShare: '1',
    isOwner: false,
  };
  const made = await request.post('/api/labour-grades').set(as('maker')).send(driver).expect(201);
  expect(made.body).toMatchObject(driver);
  const { body } = await request.get('/api/labour-rates?working=true').set(as('read-only')).expect(200);
  // 13.50 x 1.10 (University of Illinois farmdoc, tractor cost table).
  expect(body.figures[body.rates[0].perHour].value).toBe('14.85');
  expect(body.rates[0].gradeId).toBe(made.body.id);
});

it('refuses an owner without pay, a productive share of 0 and a code twice', async () => {
  const { request, as } = application;
  const post = (change: object) =>
    request
      .post('/api/labour-grades')
      .set(as('maker'))
      .send({ ...exampleLabourGradeInput, ...change });
  expect((await post({ payPerHour: '0' }).expect(422)).body.errors[0].field).toBe('payPerHour');
  expect((await post({ productiveShare: '0' }).expect(422)).body.errors[0].field).toBe('productiveShare');
  expect((await post({ code: 'DRIVER' }).expect(409)).body.errors[0].field).toBe('code');
  await request.post('/api/labour-grades').set(as('bookkeeper')).send(exampleLabourGradeInput).expect(403);
});

it('keeps a grade while people have it', async () => {
  const { request, as } = application;
  const grade = await request
    .post('/api/labour-grades')
    .set(as('maker'))
    .send(exampleLabourGradeInput)
    .expect(201);
  const person = { name: 'Noor', gradeId: grade.body.id, paidHoursPerYear: '1600' };
  const made = await request.post('/api/people').set(as('maker')).send(person).expect(201);
  expect(made.body).toMatchObject({ ...person, gradeCode: 'OWNER' });
  const maker = { ...as('maker'), 'if-match': '"1"' };
  await request.delete(`/api/labour-grades/${grade.body.id}`).set(maker).expect(409);
  const stranger = await request
    .put(`/api/people/${made.body.id}`)
    .set(maker)
    .send({ ...person, gradeId: 'nobody' })
    .expect(422);
  expect(stranger.body.errors[0].field).toBe('gradeId');
  await request
    .put(`/api/people/${made.body.id}`)
    .set(maker)
    .send({ ...person, paidHoursPerYear: '900.5' })
    .expect(200);
  await request.delete(`/api/people/${made.body.id}`).set(maker).expect(412);
  await request
    .delete(`/api/people/${made.body.id}`)
    .set({ ...maker, 'if-match': '"2"' })
    .expect(204);
  await request.delete(`/api/labour-grades/${grade.body.id}`).set(maker).expect(204);
  await request.get(`/api/labour-grades/${grade.body.id}`).set(as('maker')).expect(404);
});
