// OpenType 1.9, table `cmap`: which characters a font has a glyph for. Formats 4 (16 bit) and 12 (32 bit) are what
// fonts with Unicode carry.
const NO_CHARACTER = 0xffff;

function tableAt(font: DataView, tag: string): number {
  const tables = font.getUint16(4);
  for (let at = 0; at < tables; at += 1) {
    const record = 12 + at * 16;
    const name = String.fromCharCode(...[0, 1, 2, 3].map((byte) => font.getUint8(record + byte)));
    if (name === tag) return font.getUint32(record + 8);
  }
  throw new Error(`The font has no table ${tag}`);
}

function ofSegments(font: DataView, at: number): number[] {
  const doubled = font.getUint16(at + 6);
  const ends = at + 14;
  const starts = ends + doubled + 2;
  const deltas = starts + doubled;
  const offsets = deltas + doubled;
  const found: number[] = [];
  for (let segment = 0; segment < doubled; segment += 2) {
    const start = font.getUint16(starts + segment);
    const delta = font.getUint16(deltas + segment);
    const offset = font.getUint16(offsets + segment);
    for (let point = start; point <= font.getUint16(ends + segment) && point < NO_CHARACTER; point += 1) {
      const listed = offset === 0 ? point : font.getUint16(offsets + segment + offset + (point - start) * 2);
      if (listed !== 0 && ((listed + delta) & 0xffff) !== 0) found.push(point);
    }
  }
  return found;
}

function ofGroups(font: DataView, at: number): number[] {
  const found: number[] = [];
  for (let group = 0; group < font.getUint32(at + 12); group += 1) {
    const record = at + 16 + group * 12;
    const start = font.getUint32(record);
    const glyph = font.getUint32(record + 8);
    for (let point = start; point <= font.getUint32(record + 4); point += 1)
      if (glyph + point - start !== 0) found.push(point);
  }
  return found;
}

/** The code points a TrueType font has a glyph for. */
export function charactersOfFont(bytes: Uint8Array): number[] {
  const font = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const cmap = tableAt(font, 'cmap');
  const maps = Array.from(
    { length: font.getUint16(cmap + 2) },
    (_, at) => cmap + font.getUint32(cmap + 8 + at * 8),
  );
  return maps.flatMap((at) => {
    const format = font.getUint16(at);
    return format === 4 ? ofSegments(font, at) : format === 12 ? ofGroups(font, at) : [];
  });
}
