import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { differences, loadPublished } from '../published/load.ts';
import { startTestApplication, type TestApplication } from './application.ts';
import { CALCULATION_ROUTES } from './calculation-routes.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication();
});
afterAll(() => application.close());

const checks = loadPublished().filter((check) => CALCULATION_ROUTES[check.function] !== undefined);

describe('published examples through the API', () => {
  it('are there for every calculation that has one', () => {
    const covered = new Set(checks.map((check) => check.function));
    expect([...covered].sort()).toEqual(Object.keys(CALCULATION_ROUTES).sort());
  });

  it.each(checks.map((check) => [check.id, check] as const))('%s', async (_, check) => {
    const route = CALCULATION_ROUTES[check.function];
    if (route === undefined) throw new Error(`no route for ${check.function}`);
    const answer = await application.request
      .post(`/api/calculations/${route.name}`)
      .set(application.as('read-only'))
      .send(route.body(check.inputs));
    expect([answer.status, answer.body.errors]).toEqual([200, undefined]);
    const value = (id: unknown): unknown => answer.body.figures[String(id)]?.value;
    expect(differences(check, route.read(answer.body, value))).toEqual([]);
  });
});

const post = (name: string, body: object, query = '') =>
  application.request.post(`/api/calculations/${name}${query}`).set(application.as('read-only')).send(body);
const fieldsOf = (answer: { body: { errors: { field: string; mend: string }[] } }) =>
  answer.body.errors.map(({ field }) => field);

describe('a calculation', () => {
  const grade = {
    id: 'joiner',
    name: 'Joiner',
    payPerHour: '21',
    burden: '0.24',
    productiveShare: '0.8',
    isOwner: false,
  };

  it('shows its working unless that is not wanted', async () => {
    const full = await post('labour-rate', { currency: 'EUR', grade }).expect(200);
    expect(full.body.figures[full.body.perHour]).toMatchObject({
      value: '32.55',
      unit: 'money/h',
      currency: 'EUR',
      how: { operation: 'quotient' },
    });
    const bare = await post('labour-rate', { currency: 'EUR', grade }, '?working=false').expect(200);
    expect(bare.body.figures[bare.body.perHour].how).toBeUndefined();
    expect(Object.keys(bare.body.figures).length).toBeLessThan(Object.keys(full.body.figures).length);
  });

  it('is for people and programs that are known', async () => {
    await application.request
      .post('/api/calculations/labour-rate')
      .send({ currency: 'EUR', grade })
      .expect(401);
  });

  it('names the field that is wrong by its path in the body, and the mend', async () => {
    const wrong = await post('labour-rate', {
      currency: 'EUR',
      grade: { ...grade, productiveShare: '1.5' },
    }).expect(422);
    expect(wrong.body).toMatchObject({ code: 'costing-input' });
    expect(wrong.body.errors).toEqual([
      {
        field: 'grade.productiveShare',
        message: 'cannot be 1.5',
        mend: 'enter a number above 0 and of at most 1',
      },
    ]);
    const finish = {
      id: 'oil',
      name: 'Oil',
      system: 'metric',
      area: '4',
      coats: '2',
      isWipedOil: false,
      by: { kind: 'film', volumeSolids: '40', transferEfficiency: '1', dryFilmPerCoat: '30' },
    };
    expect(fieldsOf(await post('finish-quantity', { finish }).expect(422))).toEqual([
      'finish.by.volumeSolids',
    ]);
    const board = { count: '1', thicknessIn: '1', widthIn: '0', lengthFt: '8' };
    expect(fieldsOf(await post('board-measure', { moisture: 'dry', boards: [board] }).expect(422))).toEqual([
      'boards.0.widthIn',
    ]);
    const asset = { id: 'saw', name: 'Saw', cost: '100', salvage: '200', lifeYears: '5' };
    expect(
      fieldsOf(
        await post('depreciation-schedule', {
          currency: 'EUR',
          method: { name: 'straight-line' },
          asset,
        }).expect(422),
      ),
    ).toEqual(['asset.salvage']);
    expect(
      fieldsOf(
        await post('learning-curve', { model: 'unit', rate: '2', firstUnitHours: '1', units: [2] }).expect(
          422,
        ),
      ),
    ).toEqual(['rate']);
    expect(fieldsOf(await post('labour-rate', { currency: 'EUR', grade: 3 }).expect(422))).toEqual(['grade']);
  });
});

describe('board measure', () => {
  it('rounds surface measure before the thickness', async () => {
    // American Hardwood Export Council, web guide to grading sawn lumber, page "Measurement": 8/4, 6 1/4 in x 8 ft.
    const board = { count: '1', thicknessIn: '2', widthIn: '6.25', lengthFt: '8' };
    const tally = (rounding: string) =>
      post('board-measure', { moisture: 'dry', rounding, boards: [board] }).expect(200);
    const graded = await tally('surface-measure');
    expect(graded.body.figures[graded.body.lines[0].surface].value).toBe('4');
    expect(graded.body.figures[graded.body.total]).toMatchObject({ value: '8', unit: 'bd ft' });
    const exact = await tally('exact');
    expect(Number(exact.body.figures[exact.body.total].value)).toBeCloseTo(8.333333, 6);
  });
});

describe('resawing', () => {
  const stock = {
    roughThickness: '2 in',
    cleanUp: '3',
    kerf: '3',
    finishedThickness: '1/2 in',
    planing: '1.5',
  };

  it('reads thicknesses as people write them', async () => {
    // Worked by hand from the formula: floor((50.8 - 3 + 3) / (14.2 + 3)) = 2.
    const { body } = await post('resaw', stock).expect(200);
    expect(body.figures[body.leaves]).toMatchObject({ value: '2', unit: 'each' });
    expect(body.figures[body.sawnLeaf].value).toBe('14.2');
  });

  it('names the stock that gives no two leaves', async () => {
    const answer = await post('resaw', { ...stock, roughThickness: '26' }).expect(422);
    expect(answer.body.errors).toEqual([
      {
        field: 'roughThickness',
        message: 'is too little: 26 mm stock gives no two leaves of 14.2 mm, which need 34.4 mm',
        mend: 'use thicker stock or a thinner leaf, or do not resaw it',
      },
    ]);
    expect(fieldsOf(await post('resaw', { ...stock, roughThickness: 'thick' }).expect(422))).toEqual([
      'roughThickness',
    ]);
  });
});
