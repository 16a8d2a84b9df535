import { crc32, deflateSync } from 'node:zlib';

type Shade = (x: number, y: number) => number;

function chunk(tag: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(tag, 'latin1'), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}

/** A grey picture as PNG (ISO/IEC 15948); `shade` gives 0 (black) to 255 (white) for each point. */
export function greyPng(width: number, height: number, shade: Shade): Uint8Array {
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) rows[y * (width + 1) + 1 + x] = shade(x, y);
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', new Uint8Array()),
  ]);
}

/** Three dovetails, as a mark of an invented workshop. */
export function sampleLogo(): Uint8Array {
  return greyPng(480, 200, (x, y) => {
    const pitch = x % 160;
    const slope = Math.round(y / 5);
    return pitch > 20 + slope && pitch < 140 - slope ? 40 : 255;
  });
}

/** A board with its grain, as a picture of a piece. */
export function samplePhotograph(): Uint8Array {
  return greyPng(600, 400, (x, y) => {
    const ring = Math.sin((y + 14 * Math.sin(x / 90)) / 9) + Math.sin((y + 30 * Math.sin(x / 200)) / 23);
    return Math.round(168 + 26 * ring);
  });
}
