import {
  addressOf,
  type Contract,
  createClient,
  createLabourGrade,
  createOverheadAmount,
  createTool,
  editClient,
  editLabourGrade,
  editOverheadAmount,
  editPerson,
  editTool,
  getClient,
  getLabourGrade,
  getOverheadAmount,
  getPerson,
  getTool,
  listClients,
  listLabourGrades,
  listOverheadAmounts,
  listTools,
  removeClient,
  removeLabourGrade,
  removeOverheadAmount,
  removePerson,
  removeTool,
} from '@scantling/contracts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from './application.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication();
  await application.database.workshop.create({
    data: { name: 'Invented joinery', currency: 'EUR', settings: {} },
  });
});
afterAll(() => application.close());

const nobody = { id: '0193f6a0-0000-7000-8000-000000000009' };
const named = (contracts: readonly Contract[]) =>
  contracts.map((contract) => [contract.name, contract] as const);

describe('records of the shop', () => {
  it.each(named([getTool, getLabourGrade, getPerson, getOverheadAmount, getClient]))(
    '%s says when there is none',
    async (_, contract) => {
      const address = addressOf(contract, { params: nobody });
      const { body } = await application.request.get(address).set(application.as('read-only')).expect(404);
      expect(body.code).toBe('not-found');
    },
  );

  it.each(
    named([
      removeTool,
      removeLabourGrade,
      removePerson,
      removeOverheadAmount,
      removeClient,
      editTool,
      editLabourGrade,
      editOverheadAmount,
      editClient,
    ]),
  )('%s needs a version, a role and a record', async (_, contract) => {
    const address = addressOf(contract, { params: nobody });
    const method = contract.method === 'DELETE' ? 'delete' : 'put';
    const send = (headers: Record<string, string>) =>
      application.request[method](address)
        .set(headers)
        .send(contract.example.body as object | undefined);
    await send(application.as('owner')).expect(428);
    await send({ ...application.as('read-only'), 'if-match': '"1"' }).expect(403);
    await send({ ...application.as('owner'), 'if-match': '"1"' }).expect(404);
    await send({ 'if-match': '"1"' }).expect(401);
  });

  it('a person of no grade is refused before anything else is looked at', async () => {
    await application.request
      .put(addressOf(editPerson, { params: nobody }))
      .set({ ...application.as('owner'), 'if-match': '"1"' })
      .send(editPerson.example.body as object)
      .expect(422);
  });

  it.each([
    [createTool, listTools],
    [createLabourGrade, listLabourGrades],
    [createOverheadAmount, listOverheadAmounts],
    [createClient, listClients],
  ] as const)('what is entered is listed ($name)', async (create, list) => {
    const { request, as } = application;
    const made = await request
      .post(create.path)
      .set(as('owner'))
      .send(create.example.body as object)
      .expect(201);
    const listed = await request.get(list.path).set(as('read-only')).expect(200);
    expect(listed.body).toEqual({ items: [made.body], next: null });
    expect(made.headers.etag).toBe('"1"');
  });
});
