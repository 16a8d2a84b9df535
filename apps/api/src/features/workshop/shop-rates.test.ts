import { exampleToolInput } from '@scantling/contracts';
import { machineHourRate, overheadRate } from '@scantling/costing';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { shopRates } from './shop-rates.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication();
});
afterAll(() => application.close());

const extractor = {
  ...exampleToolInput,
  code: 'DUST',
  name: 'Dust extractor',
  bookCost: '0',
  acquisition: 'given',
  replacementCost: '1200',
  salvage: '0',
  cutters: [],
} as const;

it('needs a workshop', async () => {
  await expect(shopRates(application.database, '2026-03-01')).rejects.toMatchObject({ code: 'not-found' });
});

it('takes grades and machines by code, and pools net of what rates recover', async () => {
  const { database, request, as } = application;
  await database.workshop.create({
    data: { name: 'Invented joinery', currency: 'EUR', settings: { floorCostPerM2: '100', kerf: '3.2' } },
  });
  for (const tool of [extractor, { ...exampleToolInput, attached: ['DUST'] }])
    await request.post('/api/tools').set(as('maker')).send(tool).expect(201);
  const grade = await request
    .post('/api/labour-grades')
    .set(as('maker'))
    .send({
      code: 'OWNER',
      name: 'Owner',
      payPerHour: '20',
      burden: '0.2',
      productiveShare: '0.8',
      isOwner: true,
    })
    .expect(201);
  await request
    .post('/api/people')
    .set(as('maker'))
    .send({ name: 'Noor', gradeId: grade.body.id, paidHoursPerYear: '1500' })
    .expect(201);
  const amounts = [
    { name: 'Rent', yearlyAmount: '9000', home: 'workshop-pool', recoveredAs: 'floor', note: '' },
    { name: 'Bookkeeping', yearlyAmount: '1500', home: 'administration-pool', recoveredAs: null, note: '' },
    { name: 'Pay', yearlyAmount: '36000', home: 'labour-rate', recoveredAs: 'pay', note: '' },
  ];
  for (const amount of amounts)
    await request.post('/api/overhead/amounts').set(as('bookkeeper')).send(amount).expect(201);

  const rates = await shopRates(database, '2026-03-01');
  expect(rates.grades.map((one) => one.id)).toEqual(['OWNER']);
  expect(rates.machines.map((one) => [one.id, one.attached.map((other) => other.id)])).toEqual([
    ['DUST', []],
    ['PLANER', ['DUST']],
  ]);
  expect([rates.kerf, rates.shop.floorCostPerM2]).toEqual(['3.2', '100']);
  // Two machines on 6 m2 each at 100 a year: 1200 of the rent is in machine-hour rates.
  const { net, rate } = overheadRate(rates.workshopOverhead, { currency: 'EUR' });
  expect([net.value.toString(), rate.value.toString()]).toEqual(['7800', '5.2']);
  expect(overheadRate(rates.administrationOverhead, { currency: 'EUR' }).rate.value.toString()).toBe('1');
  for (const tool of rates.machines)
    expect(
      machineHourRate(tool, 'replacement', { context: { currency: 'EUR' }, shop: rates.shop }).toolId,
    ).toBe(tool.id);
});

it('proves that each yearly amount has one home, and names what has none', async () => {
  const { request, as } = application;
  const { body } = await request.get('/api/overhead/recovery?working=true').set(as('read-only')).expect(200);
  const value = (id: string) => Number(body.figures[id].value);
  expect(value(body.proof.total)).toBe(46500);
  // 1500 paid hours at 20 with 20 % on top.
  expect(value(body.proof.homes['labour-rate'])).toBe(36000);
  expect(value(body.proof.homes['workshop-pool'])).toBe(7800);
  expect(value(body.proof.rest)).toBe(0);
  const about = body.proof.findings.map((finding: { kind: string; about: string }) => finding.about);
  // Depreciation, interest and the like come back in rates but were never entered as amounts.
  expect(about).toEqual(
    expect.arrayContaining(['depreciation', 'interest', 'insurance', 'maintenance', 'cutters']),
  );
  expect(body.proof.holds).toBe(false);
  expect(body.pools.map((pool: { kind: string }) => pool.kind)).toEqual(['workshop', 'administration']);
});
