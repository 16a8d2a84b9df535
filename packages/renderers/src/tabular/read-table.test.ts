import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTable } from './read-table.ts';
import { TableUnreadableError } from './table.ts';
import { writeCsv } from './write-csv.ts';
import { writeWorkbook } from './write-workbook.ts';

async function read(bytes: Uint8Array | string) {
  const table = await readTable(typeof bytes === 'string' ? Buffer.from(bytes) : bytes);
  const rows = [];
  for await (const row of table.rows) rows.push(row);
  return { ...table, rows };
}

const cellsOf = async (bytes: Uint8Array | string) => (await read(bytes)).rows.map(({ cells }) => cells);

describe('separated text', () => {
  it.each([
    ['code,price\nA,1250.50\n', ',', 'point', '1250.50'],
    ['code;price\nA;1.250,50\n', ';', 'comma', '1.250,50'],
    ['code;price\nA;12,5\n', ';', 'comma', '12,5'],
    ['code;price\nA;12.75\n', ';', 'point', '12.75'],
    ['code\tprice\r\nA\t12,50\r\n', '\t', 'comma', '12,50'],
    ['code|price\nA|0.25', '|', 'point', '0.25'],
    ['code,price\nA,"1,250.50"\n', ',', 'point', '1,250.50'],
  ])('finds out how %j is written', async (text, separator, decimalMark, price) => {
    const table = await read(text);
    expect(table).toMatchObject({ format: 'csv', separator, decimalMark });
    expect(table.rows[1]?.cells).toEqual(['A', price]);
  });

  it.each([
    ['Prices, spring list\n\nNr;Text;Preis\nA;Ash;6,40\nB;Oak;7,10\n', ';', 3],
    ['Nr;Text;Preis\nA;Ash, rough, FAS;6,40\nB;Oak, rough, FAS;7,10\n', ';', 3],
    ['Nr;Preis\nA;6,40\n', ';', 2],
    ['Invented yard; all prices without tax\ncode,text,price\nA,Ash,6.40\n', ',', 3],
  ])('finds the separator beside titles, texts and decimal commas in %j', async (text, separator, cells) => {
    const table = await read(text);
    expect(table.separator).toBe(separator);
    expect(table.rows.at(-1)?.cells).toHaveLength(cells);
  });

  it('reads every encoding, with and without a byte order mark', async () => {
    const text = 'code;description\nA;Esche gedämpft 20 mm\n';
    const utf16 = Buffer.from(text, 'utf16le');
    const bytes = [
      Buffer.from(text),
      Buffer.from(`\ufeff${text}`),
      Buffer.from(text, 'latin1'),
      utf16,
      Buffer.concat([Buffer.from([0xff, 0xfe]), utf16]),
      Buffer.concat([Buffer.from([0xfe, 0xff]), Buffer.from(utf16).swap16()]),
    ];
    for (const given of bytes)
      expect(await cellsOf(given)).toEqual([
        ['code', 'description'],
        ['A', 'Esche gedämpft 20 mm'],
      ]);
    // 0x80 is the euro sign in Windows-1252 alone (Unicode mapping table CP1252).
    expect(await cellsOf(Buffer.from([0x61, 0x2c, 0x80, 0x0a]))).toEqual([['a', '€']]);
  });

  it('numbers rows by the line they begin on, over quoted line ends and empty lines', async () => {
    const { rows } = await read('a,b\n"two\nlines",1\n\n,,\nlast,2\n');
    expect(rows.map(({ number }) => number)).toEqual([1, 2, 6]);
  });

  it('gives back what was written, whatever a spreadsheet would run', async () => {
    const cell = fc.oneof(
      fc.constantFrom('=1+1', '+cmd', '-x', '@a', "'=a", "''-b", 'a "quoted", text', 'two\nlines', '3/4"'),
      fc.string({ unit: fc.constantFrom('a', 'ö', ',', ';', '"', "'", '=', '-', '1') }),
    );
    const table = fc.array(
      fc.tuple(
        fc.constant('k'),
        cell.map((text) => text.trim()),
        fc.constant('z'),
      ),
      { minLength: 1, maxLength: 8 },
    );
    await fc.assert(
      fc.asyncProperty(table, async (rows) => {
        const header = ['one', 'two', 'three'];
        expect(await cellsOf(writeCsv([header, ...rows]))).toEqual([header, ...rows]);
      }),
    );
  });

  it('guards text cells only', () => {
    expect(writeCsv([['=1+1', { number: '-2.5' }, 'x']])).toBe("\ufeff'=1+1,-2.5,x\r\n");
  });

  it('holds rows of a large file one after the other', async () => {
    const line = `A1,${'ash board '.repeat(10)},12.50\n`;
    const bytes = Buffer.from(`code,description,price\n${line.repeat(100_000)}`);
    const before = process.memoryUsage().heapUsed;
    let most = 0;
    let count = 0;
    for await (const row of (await readTable(bytes)).rows) {
      count += 1;
      if (row.number % 5000 === 0) most = Math.max(most, process.memoryUsage().heapUsed - before);
    }
    expect(count).toBe(100_001);
    expect(most).toBeLessThan(150 * 1024 * 1024);
  }, 30_000);
});

describe('a workbook', () => {
  it('gives back what was written, numbers as numbers', async () => {
    const rows = [
      ['code', 'price', 'note'],
      ['A', { number: '12.5' }, '=not run'],
      ['B', { number: '0.000001' }, 'ö'],
    ];
    const table = await read(await writeWorkbook([{ name: 'Prices: 1/2', rows }]));
    expect(table).toMatchObject({ format: 'xlsx', decimalMark: 'point' });
    expect(table.rows.map(({ cells }) => cells)).toEqual([
      ['code', 'price', 'note'],
      ['A', '12.5', '=not run'],
      ['B', '0.000001', 'ö'],
    ]);
  });

  it('writes number cells with the mark of its text cells', async () => {
    const rows = [['price'], ['12,50'], [{ number: '3.75' }]];
    const table = await read(await writeWorkbook([{ name: 'Prices', rows }]));
    expect(table.decimalMark).toBe('comma');
    expect(table.rows[2]?.cells).toEqual(['3,75']);
  });

  it('says what is wrong with one that is cut off', async () => {
    const whole = await writeWorkbook([{ name: 'Prices', rows: [['code'], ['A']] }]);
    await expect(read(whole.subarray(0, whole.length - 200))).rejects.toThrow(TableUnreadableError);
    const garbled = Uint8Array.from(whole, (byte, index) => (index > 60 && index < 900 ? byte ^ 0x5a : byte));
    await expect(read(garbled)).rejects.toThrow(TableUnreadableError);
  });
});

it.each([
  ['nothing', Buffer.from('')],
  ['blank lines', Buffer.from('\n\n \n')],
  ['a PDF', Buffer.from('%PDF-1.7 ...')],
  ['an old workbook', Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1])],
])('refuses %s with a mend', async (_, bytes) => {
  await expect(read(bytes)).rejects.toMatchObject({
    code: 'table-unreadable',
    mend: expect.stringMatching(/\.$/),
  });
});
