import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startTestApplication, type TestApplication } from '../../../../tests/api/application.ts';
import { keepPicture, removeDemoPictures } from './picture-records.ts';

let test: TestApplication;
beforeAll(async () => {
  test = await startTestApplication();
});
afterAll(() => test.close());

const send = (bytes: Buffer, name = 'bench.jpg') =>
  test.request.post('/api/pictures').set(test.as('maker')).attach('file', bytes, name);
const read = (sha256: string, query = '') =>
  test.request.get(`/api/pictures/${sha256}${query}`).set(test.as('read-only')).buffer();

/** A drawing whose left half is red and whose right half is blue. */
function drawing(width: number, height: number) {
  const half = {
    create: { width: Math.floor(width / 2), height, channels: 3, background: '#0000ff' },
  } as const;
  return sharp({ create: { width, height, channels: 3, background: '#ff0000' } }).composite([
    { input: half, left: Math.ceil(width / 2), top: 0 },
  ]);
}

async function colourAt(bytes: Buffer, left: number, top: number): Promise<number[]> {
  const { data } = await sharp(bytes)
    .extract({ left, top, width: 1, height: 1 })
    .raw()
    .toBuffer({ resolveWithObject: true });
  return [...data];
}

describe('a picture', () => {
  it('is made anew: upright, without place and camera data', async () => {
    const photo = await drawing(200, 100)
      .withExif({ IFD0: { Copyright: 'Somebody' }, IFD3: { GPSLatitude: '59/1 0/1 0/1' } })
      // EXIF orientation 6: the camera was held so that the right edge is the top.
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    expect((await sharp(photo).metadata()).exif).toBeDefined();
    const { body } = await send(photo).expect(201);
    expect(body).toEqual({
      sha256: expect.stringMatching(/^[0-9a-f]{64}$/),
      mediaType: 'image/jpeg',
      width: 100,
      height: 200,
    });
    const { body: bytes } = await read(body.sha256).expect(200);
    const kept = await sharp(bytes).metadata();
    expect([kept.exif, kept.orientation, kept.icc, kept.space]).toEqual([
      undefined,
      undefined,
      undefined,
      'srgb',
    ]);
    const [red = 0, , blue = 0] = await colourAt(bytes, 50, 20);
    expect(red).toBeGreaterThan(200);
    expect(blue).toBeLessThan(60);
  });

  it('is kept once, under the name of its content, and served to be kept for good', async () => {
    const photo = await drawing(1200, 600).jpeg().toBuffer();
    const [one, other] = [await send(photo).expect(201), await send(photo).expect(201)];
    expect(other.body).toEqual(one.body);
    const { sha256 } = one.body;
    expect(await test.database.picture.count({ where: { sha256 } })).toBe(1);
    const full = await read(sha256).expect(200);
    expect(full.headers).toMatchObject({
      'content-type': 'image/jpeg',
      etag: `"${sha256}"`,
      'cache-control': 'private, max-age=31536000, immutable',
      'x-content-type-options': 'nosniff',
    });
    await read(sha256).set('if-none-match', `"${sha256}"`).expect(304);
    const small = await read(sha256, '?size=thumbnail').expect(200);
    expect(await sharp(small.body).metadata()).toMatchObject({ width: 480, height: 240 });
    expect(small.headers.etag).not.toBe(full.headers.etag);
  });

  it('keeps transparency, and is no longer than 3000 pixels', async () => {
    const clear = { r: 0, g: 0, b: 0, alpha: 0 };
    const logo = await sharp({ create: { width: 4000, height: 400, channels: 4, background: clear } })
      .png()
      .toBuffer();
    const { body } = await send(logo, 'logo.png').expect(201);
    expect(body).toMatchObject({ mediaType: 'image/png', width: 3000, height: 300 });
    expect((await colourAt((await read(body.sha256)).body, 5, 5)).at(3)).toBe(0);
  });

  it('printed in four colours or as WebP is turned into sRGB', async () => {
    const cmyk = await drawing(64, 64).toColourspace('cmyk').jpeg().toBuffer();
    expect((await sharp(cmyk).metadata()).space).toBe('cmyk');
    const { body } = await send(cmyk).expect(201);
    expect((await sharp((await read(body.sha256)).body).metadata()).space).toBe('srgb');
    const webp = await drawing(64, 64).webp().toBuffer();
    expect((await send(webp, 'x.webp').expect(201)).body.mediaType).toBe('image/jpeg');
  });

  it('sent under another ending is what its content says', async () => {
    const photo = await drawing(80, 80).jpeg().toBuffer();
    expect((await send(photo, 'photo.png').expect(201)).body.mediaType).toBe('image/jpeg');
  });
});

describe('what is no picture', () => {
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" width="100" height="100"><script>alert(1)</script></svg>';
  const noise = async () => {
    const raw = Buffer.from(Array.from({ length: 300 * 300 * 3 }, (_, at) => (at * 7919) % 251));
    return sharp(raw, { raw: { width: 300, height: 300, channels: 3 } });
  };
  /** A PNG header that promises a picture of these sides, and nothing behind it (W3C PNG, 11.2.2 IHDR). */
  const promised = async (side: number) => {
    const small = await drawing(20, 20).png().toBuffer();
    const lying = Buffer.from(small);
    lying.writeUInt32BE(side, 16);
    lying.writeUInt32BE(side, 20);
    return lying;
  };

  it.each([
    ['an SVG', async () => Buffer.from(svg), /no picture that can be read/],
    ['a text', async () => Buffer.from('hello'), /no picture that can be read/],
    ['an empty file', async () => Buffer.alloc(0), /is empty/],
    ['a GIF', async () => drawing(40, 40).gif().toBuffer(), /no picture that can be read/],
    ['a TIFF', async () => drawing(40, 40).tiff().toBuffer(), /no picture that can be read/],
    ['a PDF', async () => Buffer.from('%PDF-1.7\n'), /no picture that can be read/],
    ['a tiny one', async () => drawing(15, 200).png().toBuffer(), /only 15 x 200 pixels/],
    [
      'half a JPEG',
      async () => {
        const whole = await (await noise()).jpeg().toBuffer();
        return whole.subarray(0, whole.length / 2);
      },
      /damaged or not whole/,
    ],
    [
      'half a PNG',
      async () => {
        const whole = await (await noise()).png().toBuffer();
        return whole.subarray(0, whole.length / 2);
      },
      /damaged or not whole/,
    ],
    ['a PNG that promises what is not there', () => promised(2000), /damaged or not whole|no picture/],
    ['a PNG that promises more than fits', () => promised(60_000), /more than 50 million pixels|no picture/],
  ])('%s is refused', async (_, make, message) => {
    const { body } = await send(await make(), 'picture.png').expect(422);
    expect(body.errors).toEqual([
      { field: 'file', message: expect.stringMatching(message), mend: expect.stringMatching(/\w/) },
    ]);
  });

  it('is refused when it is too large', async () => {
    const { body } = await send(Buffer.alloc(26 * 1024 * 1024, 1)).expect(413);
    expect(body.detail).toMatch(/25 MB/);
  });

  it('has no address', async () => {
    for (const name of ['x', '..%2F..%2Fetc%2Fpasswd', '%00', `${'a'.repeat(64)}%0d%0a`, 'A'.repeat(64)])
      await read(name).expect(422);
    await read('0'.repeat(64)).expect(404);
    await test.request.get(`/api/pictures/${'0'.repeat(64)}`).expect(401);
    await test.request
      .post('/api/pictures')
      .set(test.as('read-only'))
      .attach('file', Buffer.from('x'), 'x.png')
      .expect(403);
    await test.request
      .post('/api/pictures')
      .set(test.as('maker'))
      .attach('other', Buffer.from('x'), 'x.png')
      .expect(422);
  });
});

describe('pictures of the demo', () => {
  it('go with it, but for those that are used or that somebody has sent as well', async () => {
    const make = (side: number) => drawing(side, side).png().toBuffer();
    const keep = async (side: number, isDemo: boolean) => {
      const kept = await keepPicture(test.database, await make(side), { createdBy: 'user:x', isDemo });
      return kept.sha256;
    };
    const [gone, used, sent] = [await keep(20, true), await keep(22, true), await keep(24, true)];
    expect(await keep(24, false)).toBe(sent);
    await test.database.$transaction((transaction) => removeDemoPictures(transaction, [used]));
    for (const [sha256, count] of [
      [gone, 0],
      [used, 1],
      [sent, 1],
    ] as const)
      expect(await test.database.picture.count({ where: { sha256, isDemo: false } })).toBe(count);
  });
});
