import {
  exampleEarlyPriceInput,
  exampleEnquiryHoursInput,
  exampleEnquiryInput,
  exampleWorkshopInput,
} from '@scantling/contracts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';

let application: TestApplication;
let personId: string;

beforeAll(async () => {
  application = await startTestApplication();
  const { database } = application;
  await database.workshop.create({ data: { id: 1, ...exampleWorkshopInput } });
  const grade = await database.labourGrade.create({
    data: {
      code: 'owner',
      name: 'Owner',
      payPerHour: '40',
      burden: '0.25',
      productiveShare: '0.8',
      isOwner: true,
    },
  });
  const person = await database.person.create({
    data: { name: 'Odo Fennick', gradeId: grade.id, paidHoursPerYear: '1600' },
  });
  personId = person.id;
  // Paid hours with burden: 1600 x 40 x 1.25.
  await database.overheadAmount.create({
    data: { name: 'Pay and burden', yearlyAmount: '80000', home: 'labour-rate', recoveredAs: 'pay' },
  });
});
afterAll(() => application.close());

const as = (role: 'maker' | 'bookkeeper' | 'read-only') => application.as(role);
const daysAgo = (count: number) => new Date(Date.now() - count * 86_400_000).toISOString().slice(0, 10);

async function enter(changes: object = {}): Promise<string> {
  const body = { ...exampleEnquiryInput, ...changes };
  const answer = await application.request.post('/api/enquiries').set(as('maker')).send(body);
  expect([answer.status, answer.body.errors]).toEqual([201, undefined]);
  return answer.body.id;
}

const addHours = (id: string, changes: object = {}) =>
  application.request
    .post(`/api/enquiries/${id}/hours`)
    .set(as('maker'))
    .send({ ...exampleEnquiryHoursInput, personId, ...changes });

describe('enquiries', () => {
  it('are listed newest first, page by page, by what is asked for', async () => {
    for (const [name, receivedOn, source] of [
      ['Old', '2025-01-10', 'market'],
      ['New', '2025-03-10', 'market'],
      ['Same day', '2025-03-10', 'market'],
      ['Other', '2025-02-10', 'website'],
    ])
      await enter({ name, receivedOn, source });
    const names = (body: { items: { name: string }[] }) => body.items.map((item) => item.name);
    const list = (query: string) =>
      application.request.get(`/api/enquiries?${query}`).set(as('read-only')).expect(200);
    const first = await list('source=market&limit=2');
    expect(names(first.body)).toEqual(['Same day', 'New']);
    const next = await list(`source=market&limit=2&cursor=${first.body.next}`);
    expect([names(next.body), next.body.next]).toEqual([['Old'], null]);
    const from = await list('receivedFrom=2025-02-01&receivedTo=2025-02-28');
    expect(names(from.body)).toEqual(['Other']);
    expect(names((await list('outcome=won')).body)).toEqual([]);
    await application.request.get('/api/enquiries?cursor=x').set(as('read-only')).expect(422);
  });

  it('name what is missing: who asked, when and why it was decided', async () => {
    const wrong = await application.request
      .post('/api/enquiries')
      .set(as('maker'))
      .send({ ...exampleEnquiryInput, askedBy: '', outcome: 'lost' })
      .expect(422);
    expect(wrong.body.errors.map(({ field }: { field: string }) => field)).toEqual([
      'askedBy',
      'outcomeOn',
      'outcomeReason',
    ]);
    const early = { outcome: 'won', outcomeOn: '2026-03-01' };
    const before = await application.request
      .post('/api/enquiries')
      .set(as('maker'))
      .send({ ...exampleEnquiryInput, ...early })
      .expect(422);
    expect(before.body.errors[0].message).toContain('before the enquiry was received');
    await application.request
      .post('/api/enquiries')
      .set(as('read-only'))
      .send(exampleEnquiryInput)
      .expect(403);
  });

  it('are changed and removed at the version that was read, hours and early prices along', async () => {
    const id = await enter();
    await addHours(id).expect(201);
    const address = `/api/enquiries/${id}`;
    const maker = (etag: string) => ({ ...as('maker'), 'if-match': etag });
    const lost = {
      ...exampleEnquiryInput,
      outcome: 'lost',
      outcomeOn: '2026-03-20',
      outcomeReason: 'Too dear',
    };
    const put = await application.request.put(address).set(maker('"1"')).send(lost).expect(200);
    expect(put.body).toMatchObject({ outcome: 'lost', hoursSpent: '1.5', version: 2 });
    await application.request.put(address).set(maker('"1"')).send(lost).expect(412);
    await application.request.delete(address).set(maker('"2"')).expect(204);
    await application.request.get(address).set(as('read-only')).expect(404);
    expect(await application.database.enquiryHours.count({ where: { enquiryId: id } })).toBe(0);
  });
});

describe('hours on an enquiry', () => {
  it('keep name and grade of who spent them, also when the person is gone', async () => {
    const id = await enter();
    const { gradeId } = await application.database.person.findUniqueOrThrow({ where: { id: personId } });
    const leaver = await application.database.person.create({
      data: { name: 'Leaver', gradeId, paidHoursPerYear: '0' },
    });
    await addHours(id, { personId: leaver.id, hours: '2' }).expect(201);
    await application.database.person.delete({ where: { id: leaver.id } });
    const read = await application.request.get(`/api/enquiries/${id}/hours`).set(as('read-only')).expect(200);
    expect(read.body.items).toMatchObject([{ personId: null, personName: 'Leaver', gradeCode: 'owner' }]);
    const entry = `/api/enquiries/${id}/hours/${read.body.items[0].id}`;
    await application.request.delete(entry).set(as('maker')).expect(204);
    await application.request.delete(entry).set(as('maker')).expect(404);
    const nobody = await addHours(id, { personId: 'nobody' }).expect(422);
    expect(nobody.body.errors[0].field).toBe('personId');
    await addHours(id, { hours: '0' }).expect(422);
    await addHours('nowhere').expect(404);
  });
});

describe('early prices of an enquiry', () => {
  const keep = (id: string, body: object) =>
    application.request.post(`/api/enquiries/${id}/early-prices`).set(as('maker')).send(body);

  it('are kept with all their figures, and never change', async () => {
    const id = await enter();
    const body = { input: exampleEarlyPriceInput, note: 'told on the telephone' };
    const first = await keep(id, body).expect(201);
    const longer = { size: { length: '2400', width: '450', height: '800' } };
    const [second, third] = await Promise.all([
      keep(id, { ...body, input: { ...exampleEarlyPriceInput, asked: longer } }),
      keep(id, body),
    ]);
    expect([first.body.number, second.status, third.status]).toEqual([1, 201, 201]);
    const list = await application.request
      .get(`/api/enquiries/${id}/early-prices?limit=2`)
      .set(as('read-only'))
      .expect(200);
    expect(list.body.items.map(({ number }: { number: number }) => number)).toEqual([3, 2]);
    const read = await application.request
      .get(`/api/enquiries/${id}/early-prices/1`)
      .set(as('read-only'))
      .expect(200);
    const { worked } = read.body;
    expect(worked.standing).toBe('before-bill-of-materials');
    expect(worked.figures[worked.low.price].value).toBe(first.body.low);
    expect(worked.figures[worked.low.price].how).toBeDefined();
    const record = await application.request.get(`/api/enquiries/${id}`).set(as('read-only')).expect(200);
    expect(record.body.lastEarlyPrice).toMatchObject({ number: 3, currency: 'EUR' });
    await application.request.get(`/api/enquiries/${id}/early-prices/9`).set(as('read-only')).expect(404);
  });

  it('name what cannot be used, and keep nothing then', async () => {
    const id = await enter();
    const entered = { discount: '0', policy: { kind: 'entered', price: '900' } };
    const wrong = await keep(id, { input: { ...exampleEarlyPriceInput, terms: entered }, note: '' }).expect(
      422,
    );
    expect(wrong.body.errors[0].field).toBe('input.terms.policy.kind');
    expect(await application.database.enquiryEarlyPrice.count({ where: { enquiryId: id } })).toBe(0);
    await keep('nowhere', { input: exampleEarlyPriceInput, note: '' }).expect(404);
  });
});

describe('hours on lost enquiries', () => {
  const recovery = async () =>
    (await application.request.get('/api/overhead/recovery?working=true').set(as('read-only')).expect(200))
      .body;
  const change = async (lostEnquiryHours: string) => {
    const { settings } = exampleWorkshopInput;
    await application.database.workshop.update({
      where: { id: 1 },
      data: { settings: { ...settings, lostEnquiryHours } },
    });
  };

  it('are an amount of the administration pool, taken off what labour rates recover', async () => {
    await application.database.enquiry.deleteMany();
    const before = await recovery();
    expect([before.proof.holds, before.lostEnquiries]).toEqual([true, null]);
    const decided = { receivedOn: daysAgo(90), outcomeOn: daysAgo(60), outcomeReason: 'Too dear' };
    const lost = await enter({ ...decided, outcome: 'lost' });
    const won = await enter({ ...decided, outcome: 'won' });
    await addHours(lost, { onDate: daysAgo(80), hours: '4' }).expect(201);
    await addHours(lost, { onDate: daysAgo(400), hours: '100' }).expect(201);
    await addHours(won, { onDate: daysAgo(80), hours: '7' }).expect(201);
    const after = await recovery();
    const value = (id: string) => Number(after.figures[id].value);
    // 4 h x 40 x 1.25; the year as a whole costs what it cost before.
    expect([value(after.lostEnquiries.perYear), value(after.lostEnquiries.hours)]).toEqual([200, 4]);
    expect(value(after.proof.homes['administration-pool'])).toBe(200);
    expect(value(after.proof.homes['labour-rate'])).toBe(79_800);
    expect([value(after.proof.total), value(after.proof.rest), after.proof.holds]).toEqual([80_000, 0, true]);
    const line = after.proof.lines.find(({ id }: { id: string }) => id === 'lost-enquiries');
    expect(line).toMatchObject({ home: 'administration-pool' });
    expect(after.figures[`lost-enquiries/${lost}/owner/hours`].source.record).toBe(`enquiry:${lost}`);
    const pool = after.pools.find(({ kind }: { kind: string }) => kind === 'administration');
    expect(value(pool.net)).toBe(200);
  });

  it('stay in labour rates where productive shares leave them out already', async () => {
    await change('labour-rate');
    const { proof, figures, lostEnquiries } = await recovery();
    expect(lostEnquiries.home).toBe('labour-rate');
    expect(Number(figures[proof.homes['labour-rate']].value)).toBe(80_000);
    expect(Number(figures[proof.homes['administration-pool']].value)).toBe(0);
    expect(proof.holds).toBe(true);
    await change('administration-pool');
  });

  it('show in the results by source', async () => {
    const { body } = await application.request
      .get('/api/enquiries/results?working=true')
      .set(as('read-only'))
      .expect(200);
    const value = (id: string) => Number(body.figures[id].value);
    expect(value(body.all.winRate)).toBe(0.5);
    expect([value(body.all.hoursPerWon), value(body.all.hoursPerLost)]).toEqual([7, 104]);
    const none = await application.request
      .get(`/api/enquiries/results?from=${daysAgo(1)}`)
      .set(as('read-only'))
      .expect(200);
    expect([none.body.sources, none.body.all.winRate]).toEqual([[], null]);
  });
});
