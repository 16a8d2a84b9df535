import { exampleToolInput } from '@scantling/contracts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../../tests/api/application.ts';
import { openWorkbook } from '../../../../../tests/workbooks/open-workbook.ts';
import { workbookFaults } from '../../../../../tests/workbooks/workbook-faults.ts';

let application: TestApplication;

beforeAll(async () => {
  application = await startTestApplication({ clock: () => new Date('2026-03-01T09:00:00Z') });
  await application.database.workshop.create({
    data: { name: 'Invented joinery', currency: 'EUR', settings: { electricityPerKwh: '0.3' } },
  });
});
afterAll(() => application.close());

const saw = {
  ...exampleToolInput,
  code: 'SAW',
  name: 'Panel saw',
  acquisition: 'new',
  acquiredOn: '2024-01-05',
  bookCost: '6000',
  replacementCost: '6600',
  salvage: '600',
  lifeYears: '10',
  lifeHours: null,
  cutters: [],
  depreciation: { name: 'declining-balance', factor: '2', hasSwitch: true },
} as const;

const send = (tool: object, status: number) =>
  application.request.post('/api/tools').set(application.as('maker')).send(tool).expect(status);

describe('tool records', () => {
  it('are kept as given, and changed only at the version that was read', async () => {
    const { request, as } = application;
    const made = await send(saw, 201);
    const { id, version, isDemo, ...kept } = made.body;
    expect([version, isDemo, kept]).toEqual([1, false, saw]);
    const changed = { ...saw, name: 'Panel saw, rebuilt' };
    const put = (etag: string) =>
      request
        .put(`/api/tools/${id}`)
        .set({ ...as('bookkeeper'), 'if-match': etag })
        .send(changed);
    expect((await put('"1"').expect(200)).body).toMatchObject({ name: changed.name, version: 2 });
    await put('"1"').expect(412);
    const got = await request.get(`/api/tools/${id}`).set(as('read-only')).expect(200);
    expect([got.body.name, got.headers.etag]).toEqual([changed.name, '"2"']);
    const listed = await request.get('/api/tools?limit=1').set(as('read-only')).expect(200);
    expect([listed.body.items.length, listed.body.next]).toEqual([1, null]);
  });

  it('name the field that keeps a rate from being worked out', async () => {
    const fields = async (tool: object) =>
      (await send({ ...saw, code: 'X', ...tool }, 422)).body.errors.map(
        (one: { field: string }) => one.field,
      );
    expect(await fields({ salvage: '7000' })).toEqual(['salvage']);
    expect(await fields({ acquisition: 'given' })).toEqual(['bookCost']);
    expect(await fields({ acquisition: 'hired' })).toEqual(['hirePerHour']);
    expect(await fields({ attached: ['NOBODY'] })).toEqual(['attached']);
    expect(await fields({ attached: ['X'] })).toEqual(['attached']);
    expect(await fields({ soldOn: '2023-01-01' })).toEqual(['soldOn']);
    expect(await fields({ depreciation: { name: 'units-of-production' } })).toEqual(['lifeHours']);
    expect(await fields({ hoursPerYear: '9000' })).toEqual(['hoursPerYear']);
    expect((await send(saw, 409)).body.errors[0].field).toBe('code');
    expect(await application.database.tool.count()).toBe(1);
  });

  it('stay while another machine runs with them, and keep it when their code changes', async () => {
    const { request, as } = application;
    const dust = await send({ ...saw, code: 'DUST', name: 'Extractor' }, 201);
    const host = await send({ ...saw, code: 'HOST', name: 'Host', attached: ['DUST'] }, 201);
    const address = `/api/tools/${dust.body.id}`;
    const maker = (etag: string) => ({ ...as('maker'), 'if-match': etag });
    await request.delete(address).set(maker('"1"')).expect(409);
    await request
      .put(address)
      .set(maker('"1"'))
      .send({ ...saw, code: 'DUST-2', name: 'Extractor' })
      .expect(200);
    const renamed = await request.get(`/api/tools/${host.body.id}`).set(as('maker')).expect(200);
    expect(renamed.body).toMatchObject({ attached: ['DUST-2'], version: 2 });
    await request.delete(`/api/tools/${host.body.id}`).set(maker('"2"')).expect(204);
    await request.delete(address).set(maker('"1"')).expect(412);
    await request.delete(address).set(maker('"2"')).expect(204);
  });
});

describe('what a tool costs', () => {
  it('is worked out on three bases, the book basis in the year of the clock', async () => {
    const { request, as, database } = application;
    const { id } = await database.tool.findUniqueOrThrow({ where: { code: 'SAW' } });
    const { body } = await request
      .get(`/api/tools/${id}/rates?working=true`)
      .set(as('read-only'))
      .expect(200);
    expect(body.rates.map((rate: { basis: string }) => rate.basis)).toEqual([
      'book',
      'replacement',
      'marginal',
    ]);
    const line = (basis: string, kind: string) => {
      const rate = body.rates.find((one: { basis: string }) => one.basis === basis);
      const found = rate.lines.find((one: { kind: string }) => one.kind === kind);
      return Number(body.figures[found.perYear].value);
    };
    // Double declining over 10 years: 6000, 4800, 3840, of which a fifth in the third year.
    expect(line('book', 'depreciation')).toBeCloseTo(768, 9);
    expect(line('replacement', 'depreciation')).toBeCloseTo(600, 9);
    // 3 kW at 60 % load and 0.30 a kWh over 300 h.
    expect(line('marginal', 'power')).toBeCloseTo(162, 9);
  });

  it('is listed for all tools at once, each as it is worked out by itself', async () => {
    const { request, as } = application;
    const read = async (address: string) =>
      (await request.get(address).set(as('read-only')).expect(200)).body;
    const all = await read('/api/tool-rates?year=2026&working=true');
    expect(all.tools.length).toBeGreaterThan(0);
    for (const { id, rates } of all.tools) {
      const own = await read(`/api/tools/${id}/rates?year=2026`);
      const hours = (answer: typeof own, of: { perHour: string }[]) =>
        of.map(({ perHour }) => answer.figures[perHour].value);
      expect(hours(all, rates)).toEqual(hours(own, own.rates));
    }
    const [first] = all.tools;
    expect(all.figures[first.rates[0].perHour].how.inputs.length).toBeGreaterThan(0);
    const short = await read('/api/tool-rates');
    expect(short.figures[short.tools[0].rates[0].perHour].how).toBeUndefined();
  });

  it('is written off year by year, and stands in the register of a year', async () => {
    const { request, as, database } = application;
    const { id } = await database.tool.findUniqueOrThrow({ where: { code: 'SAW' } });
    const { body } = await request.get(`/api/tools/${id}/schedule`).set(as('read-only')).expect(200);
    const value = (key: string) => Number(body.figures[key].value);
    expect(body.schedule.years[0].year).toBe(2024);
    expect(value(body.schedule.years[0].expense)).toBe(1200);
    expect(value(body.schedule.total)).toBe(5400);

    const register = await request.get('/api/tool-register?year=2025').set(as('bookkeeper')).expect(200);
    const amount = (key: string) => Number(register.body.figures[key].value);
    expect(register.body.rows.map((row: { code: string }) => row.code)).toEqual(['SAW']);
    expect(amount(register.body.rows[0].opening)).toBe(4800);
    expect(amount(register.body.totals.closing)).toBe(3840);
  });

  it('goes to the accountant as CSV and XLSX', async () => {
    const { request, as } = application;
    const file = (format: string) =>
      request
        .get(`/api/tool-register/file?year=2025&format=${format}`)
        .set(as('bookkeeper'))
        .buffer(true)
        .parse((response, done) => {
          const parts: Buffer[] = [];
          response.on('data', (part: Buffer) => parts.push(part));
          response.on('end', () => done(null, Buffer.concat(parts)));
        })
        .expect(200);
    const csv = (await file('csv')).body.toString('utf8');
    expect(csv).toContain('4800.00,0.00,960.00,0.00,3840.00');
    const book = await openWorkbook((await file('xlsx')).body);
    expect(workbookFaults(book)).toEqual([]);
    expect(book.row('Register 2025', 'All tools').slice(4, 9)).toEqual([4800, 0, 960, 0, 3840]);
    book.close();
  });
});

describe('a tool that', () => {
  const rowOf = async (year: number, code: string) => {
    const { body } = await application.request
      .get(`/api/tool-register?year=${year}`)
      .set(application.as('bookkeeper'))
      .expect(200);
    const row = body.rows.find((one: { code: string }) => one.code === code);
    const value = (name: string) => Number(body.figures[row[name]].value);
    return row === undefined ? undefined : { value, leftOut: body.leftOut };
  };

  it('was sold leaves the books in that month, with its gain or loss', async () => {
    const lathe = { ...saw, code: 'LATHE', name: 'Lathe', bookCost: '1000', salvage: '0' };
    const sold = { depreciation: { name: 'straight-line' }, soldOn: '2025-06-30', soldFor: '700' };
    await send({ ...lathe, ...sold }, 201);
    const row = await rowOf(2025, 'LATHE');
    // 100 a year: 100 in 2024, half of it until June, so 850 in the books against 700.
    expect([row?.value('opening'), row?.value('depreciation')]).toEqual([900, 50]);
    expect([row?.value('disposed'), row?.value('closing'), row?.value('gain')]).toEqual([850, 0, -150]);
    expect(await rowOf(2026, 'LATHE')).toBeUndefined();
  });

  it('came and went in one year is written off for the months it was there', async () => {
    const router = { ...saw, code: 'ROUTER', name: 'Router', bookCost: '1200', salvage: '0' };
    const stay = { acquiredOn: '2025-04-20', soldOn: '2025-06-01', soldFor: '1170' };
    await send({ ...router, ...stay, depreciation: { name: 'straight-line' } }, 201);
    const row = await rowOf(2025, 'ROUTER');
    // April to June of 120 a year.
    expect([row?.value('addition'), row?.value('depreciation')]).toEqual([1200, 30]);
    expect(row?.value('gain')).toBe(0);
  });

  it('is hired has its hire for owning, and is in no books here', async () => {
    const { request, as } = application;
    const hired = { ...saw, acquisition: 'hired', bookCost: '0', hirePerHour: '12' };
    const made = await send({ ...hired, code: 'LIFT', name: 'Lift' }, 201);
    const rates = await request.get(`/api/tools/${made.body.id}/rates`).set(as('maker')).expect(200);
    const book = rates.body.rates[0];
    expect(book.lines.map((line: { kind: string }) => line.kind)).toContain('hire');
    expect([book.averageInvestment, book.life]).toEqual([null, null]);
    const schedule = await request.get(`/api/tools/${made.body.id}/schedule`).set(as('maker')).expect(422);
    expect(schedule.body.errors[0].field).toBe('acquisition');
    expect((await rowOf(2025, 'ROUTER'))?.leftOut).toEqual(['Lift']);
  });

  it('is written off by the hours it ran keeps them as measured', async () => {
    const depreciation = { name: 'units-of-production', hoursByYear: ['400', '350.5'] };
    const made = await send(
      { ...saw, code: 'MORTISER', name: 'Mortiser', lifeHours: '6000', depreciation },
      201,
    );
    expect(made.body.depreciation).toEqual(depreciation);
    const row = await rowOf(2025, 'MORTISER');
    // 5400 over 6000 hours is 0.90 an hour.
    expect(row?.value('depreciation')).toBeCloseTo(315.45, 9);
  });
});
