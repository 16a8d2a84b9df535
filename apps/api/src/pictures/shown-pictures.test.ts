import { exampleEnquiryInput, MOST_SHOWN_PICTURES } from '@scantling/contracts';
import sharp from 'sharp';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../tests/api/application.ts';

let test: TestApplication;
let place = '';
beforeAll(async () => {
  test = await startTestApplication();
});
afterAll(() => test.close());

let made = 0;
/** A picture like no other, as it is named after sending. */
async function sendPicture(): Promise<string> {
  made += 1;
  const background = { r: made % 256, g: Math.floor(made / 256), b: 90 };
  const bytes = await sharp({ create: { width: 40, height: 30, channels: 3, background } })
    .png()
    .toBuffer();
  const { body } = await test.request
    .post('/api/pictures')
    .set(test.as('maker'))
    .attach('file', bytes, 'piece.png')
    .expect(201);
  return body.sha256;
}

const maker = () => test.as('maker');
const read = () => test.request.get(place).set(test.as('read-only'));
const add = (body: object) => test.request.post(place).set(maker()).send(body);
const arrange = (version: number, body: object) =>
  test.request
    .put(place)
    .set({ ...maker(), 'if-match': `"${version}"` })
    .send(body);
const words = (sha256: string, alternativeText: string, caption = '') => ({
  sha256,
  alternativeText,
  caption,
});
const shown = (body: { items: { alternativeText: string; isCover: boolean }[] }) =>
  body.items.map(({ alternativeText, isCover }) => (isCover ? `[${alternativeText}]` : alternativeText));

async function newDesign(): Promise<string> {
  made += 1;
  const { body } = await test.request
    .post('/api/designs')
    .set(maker())
    .send({ code: `PIECE-${made}`, name: 'Piece', description: '', unitSystem: 'metric' })
    .expect(201);
  return body.id;
}
async function newEnquiry(): Promise<string> {
  const { body } = await test.request
    .post('/api/enquiries')
    .set(maker())
    .send(exampleEnquiryInput)
    .expect(201);
  return body.id;
}

describe.each([
  ['a design', '/api/designs', newDesign],
  ['an enquiry', '/api/enquiries', newEnquiry],
])('the pictures of %s', (_, path, begin) => {
  let own = '';
  beforeEach(async () => {
    own = `${path}/${await begin()}`;
    place = `${own}/pictures`;
  });
  /** Three pictures that stand there already. */
  async function three(): Promise<[string, string, string]> {
    const hashes: [string, string, string] = [await sendPicture(), await sendPicture(), await sendPicture()];
    for (const [at, sha256] of hashes.entries()) await add(words(sha256, `View ${at + 1}`)).expect(201);
    return hashes;
  }

  it('come one after the other, the first as cover', async () => {
    expect((await read().expect(200)).body).toEqual({ items: [], version: 1 });
    const [first] = await three();
    const { body, headers } = await read().expect(200);
    expect(shown(body)).toEqual(['[View 1]', 'View 2', 'View 3']);
    expect(body.items[0]).toEqual({
      sha256: first,
      mediaType: 'image/png',
      width: 40,
      height: 30,
      alternativeText: 'View 1',
      caption: '',
      isCover: true,
    });
    expect(headers.etag).toBe(`"${body.version}"`);
  });

  it('are ordered, described, covered and taken out by one list', async () => {
    const [one, two, three_] = await three();
    const { body } = await arrange(4, {
      items: [words(three_, 'From the side', 'Walnut'), words(one, 'View 1')],
      cover: one,
    }).expect(200);
    expect(shown(body)).toEqual(['From the side', '[View 1]']);
    expect(body.items[0].caption).toBe('Walnut');
    expect(shown((await read()).body)).toEqual(shown(body));
    // What was taken out can come back, and stands last.
    expect(shown((await add(words(two, 'Again')).expect(201)).body).at(-1)).toBe('Again');
  });

  it('have a first one as cover where none is named or the cover is taken out', async () => {
    const [one, two, three_] = await three();
    const { body } = await arrange(4, { items: [words(two, 'B'), words(three_, 'C')], cover: null });
    expect(shown(body)).toEqual(['[B]', 'C']);
    const { body: none } = await arrange(5, { items: [], cover: null }).expect(200);
    expect(none.items).toEqual([]);
    expect(shown((await add(words(one, 'A'))).body)).toEqual(['[A]']);
  });

  it('show their cover in the list of records', async () => {
    const coverInList = async () => {
      const { body } = await test.request.get(`${path}?limit=200`).set(test.as('read-only')).expect(200);
      return body.items.find(({ id }: { id: string }) => own === `${path}/${id}`).cover;
    };
    expect(await coverInList()).toBeNull();
    const [one, two] = [await sendPicture(), await sendPicture()];
    await add(words(one, 'One', 'with words')).expect(201);
    await add(words(two, 'Two')).expect(201);
    expect(await coverInList()).toEqual({ sha256: one, alternativeText: 'One' });
    await arrange(3, { items: [words(one, 'One'), words(two, 'Two')], cover: two }).expect(200);
    expect(await coverInList()).toEqual({ sha256: two, alternativeText: 'Two' });
  });

  it('are not overwritten by a list that rests on an older one', async () => {
    const [one] = await three();
    const body = { items: [words(one, 'Alone')], cover: null };
    await test.request.put(place).set(maker()).send(body).expect(428);
    await arrange(3, body).expect(412);
    expect((await read()).body.items).toHaveLength(3);
  });

  it('are all there when two people add at the same time', async () => {
    const hashes = [await sendPicture(), await sendPicture(), await sendPicture(), await sendPicture()];
    const added = await Promise.all(hashes.map((sha256) => add(words(sha256, 'At once'))));
    expect(added.map(({ status }) => status)).toEqual([201, 201, 201, 201]);
    const { body } = await read();
    expect(body.version).toBe(5);
    expect(new Set(body.items.map(({ sha256 }: { sha256: string }) => sha256))).toEqual(new Set(hashes));
    expect(body.items.filter(({ isCover }: { isCover: boolean }) => isCover)).toHaveLength(1);
  });

  it('are refused with the field to mend, and nothing is half kept', async () => {
    const [one, two] = await three();
    const refusals = [
      [await add(words(await sendPicture(), ' ')), 422, 'alternativeText'],
      [await add(words(one, 'Once more')), 409, 'sha256'],
      [await add(words('0'.repeat(64), 'Nowhere')), 422, 'sha256'],
      [await add(words('x', 'No name')), 422, 'sha256'],
      [await arrange(4, { items: [words(one, 'A'), words(one, 'B')], cover: null }), 422, 'items.1.sha256'],
      [await arrange(4, { items: [words(one, 'A')], cover: two }), 422, 'cover'],
      [
        await arrange(4, { items: [words(one, 'A'), words('0'.repeat(64), 'B')], cover: null }),
        422,
        'items.1.sha256',
      ],
      [await arrange(4, { items: [words(one, '')], cover: null }), 422, 'items.0.alternativeText'],
    ] as const;
    for (const [{ status, body }, expected, field] of refusals) {
      expect([status, body.errors[0].field]).toEqual([expected, field]);
      expect(body.errors[0].mend).toMatch(/\w/);
    }
    const { body } = await read();
    expect(shown(body)).toEqual(['[View 1]', 'View 2', 'View 3']);
    expect(body.version).toBe(4);
  });

  it('are for those who may change the record; nothing is there where the record is not', async () => {
    await test.request
      .post(place)
      .set(test.as('read-only'))
      .send(words(await sendPicture(), 'A'))
      .expect(403);
    await test.request.get(place).expect(401);
    place = `${path}/nobody/pictures`;
    await read().expect(404);
    await add(words(await sendPicture(), 'A')).expect(404);
    await arrange(1, { items: [], cover: null }).expect(404);
  });

  it('go with the record, while the picture itself stays', async () => {
    const [one] = await three();
    await test.request
      .delete(own)
      .set({ ...maker(), 'if-match': '"1"' })
      .expect(204);
    expect(await test.database.pictureUse.count({ where: { sha256: one } })).toBe(0);
    expect(await test.database.picture.count({ where: { sha256: one } })).toBe(1);
  });
});

describe('the pictures of a design', () => {
  it('are apart from its revisions: neither a change nor bringing one back touches them or is in their way', async () => {
    const id = await newDesign();
    place = `/api/designs/${id}/pictures`;
    await add(words(await sendPicture(), 'As drawn')).expect(201);
    const { code, name, description, unitSystem, bill, version } = (
      await test.request.get(`/api/designs/${id}`).set(maker()).expect(200)
    ).body;
    expect(version).toBe(1);
    await test.request
      .put(`/api/designs/${id}`)
      .set({ ...maker(), 'if-match': '"1"' })
      .send({ code, name, description, unitSystem, bill, note: 'Nothing but a revision' })
      .expect(200);
    await test.request
      .post(`/api/designs/${id}/revisions/1/restore`)
      .set({ ...maker(), 'if-match': '"2"' })
      .expect(200);
    const { body } = await read();
    expect(shown(body)).toEqual(['[As drawn]']);
    expect(body.version).toBe(2);
  });

  it(`are ${MOST_SHOWN_PICTURES} at the most`, async () => {
    const id = await newDesign();
    place = `/api/designs/${id}/pictures`;
    const hashes: string[] = [];
    for (let at = 0; at <= MOST_SHOWN_PICTURES; at += 1) hashes.push(await sendPicture());
    const items = hashes.map((sha256, at) => words(sha256, `View ${at}`));
    await arrange(1, { items, cover: null }).expect(422);
    await arrange(1, { items: items.slice(1), cover: null }).expect(200);
    const { body } = await add(words(hashes[0] ?? '', 'One more')).expect(422);
    expect(body.errors[0].message).toContain(String(MOST_SHOWN_PICTURES));
  });
});
