import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  browserAfter,
  startTestApplication,
  type TestApplication,
} from '../../../../../tests/api/application.ts';
import { hashOf } from '../../sign-in/secret-text.ts';
import { createSetUpLink } from '../../sign-in/set-up-link.ts';

let test: TestApplication;
beforeAll(async () => {
  test = await startTestApplication();
});
afterAll(() => test.close());

const person = {
  name: 'Noor Ashdown',
  email: 'Noor@workshop.example',
  password: 'a long enough sentence',
  workshopName: 'Ashdown Joinery',
  currency: 'EUR',
};
const setUp = (token: string, changes = {}) =>
  test.request.post('/api/set-up').send({ token, ...person, ...changes });

describe('the first owner', () => {
  it('is set up once, through the newest link', async () => {
    expect((await test.request.get('/api/session')).body).toMatchObject({ user: null, needsSetUp: true });
    const older = await createSetUpLink(test.database);
    const link = await createSetUpLink(test.database);
    if (older === undefined || link === undefined) throw new Error('there should be a link');
    const row = await test.database.setUpLink.findMany();
    expect(JSON.stringify(row)).not.toContain(link.token);
    expect(row).toHaveLength(1);

    await setUp('guessed').expect(403);
    const old = await setUp(older.token).expect(403);
    expect(old.body.code).toBe('set-up-refused');
    await setUp(link.token, { currency: 'XYZ' }).expect(422);

    const both = await Promise.all([
      setUp(link.token),
      setUp(link.token, { email: 'other@workshop.example' }),
    ]);
    expect(both.map(({ status }) => status).sort()).toEqual([201, 403]);
    expect(await test.database.user.count()).toBe(1);
    await setUp(link.token).expect(403);
    expect(await createSetUpLink(test.database)).toBeUndefined();
  });

  it('then signs in as owner of the workshop', async () => {
    const [owner] = await test.database.user.findMany();
    const { password } = person;
    const signedIn = await test.request
      .post('/api/auth/sign-in/email')
      .send({ email: owner?.email, password });
    expect(signedIn.status).toBe(200);
    const session = await test.request.get('/api/session').set(browserAfter(signedIn));
    expect(session.body).toMatchObject({
      user: { role: 'owner', kind: 'user' },
      workshop: { name: 'Ashdown Joinery', currency: 'EUR' },
      needsSetUp: false,
    });
  });

  it('gives a workshop that was left behind its name, not its currency', async () => {
    await test.database.user.deleteMany();
    const link = await createSetUpLink(test.database);
    await setUp(link?.token ?? '', { workshopName: 'Ashdown and Daughter', currency: 'USD' }).expect(201);
    expect(await test.database.workshop.findMany()).toMatchObject([
      { name: 'Ashdown and Daughter', currency: 'EUR' },
    ]);
  });

  it('is not set up while somebody can sign in, whatever the link', async () => {
    await test.database.setUpLink.create({ data: { hash: hashOf('left over') } });
    await setUp('left over').expect(403);
    expect(await test.database.user.count()).toBe(1);
  });
});
