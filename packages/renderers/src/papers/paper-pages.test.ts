import type { Paper } from '@scantling/quoting';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { cleanText } from './clean-text.ts';
import { drawnCharacters } from './font-files.ts';
import { createPaperRenderer } from './paper-renderer.ts';
import { flatTags, type ReadPdf, readPdf } from './samples/read-pdf.ts';
import { SAMPLE_DELIVERY_NOTE, SAMPLE_PAPERS, SAMPLE_RECEIPT } from './samples/sample-papers.ts';
import { sampleQuote } from './samples/sample-quote.ts';
import { SAMPLE_PHOTOGRAPH, SAMPLE_PICTURES } from './samples/sample-workshop.ts';

// A thread and its fonts take their time on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const renderer = createPaperRenderer();
afterAll(() => renderer.close());
const open = async (paper: Paper): Promise<ReadPdf> => readPdf(await renderer.render(paper, SAMPLE_PICTURES));

/** Spaces of any kind read alike: a reader gives what keeps words together as it likes. */
const plain = (text: string): string => text.replace(/[\s\u00a0\u202f]+/g, ' ');

function placesIn(text: string, words: readonly string[]): number[] {
  return words.map((word) => plain(text).indexOf(plain(word)));
}

describe.each(['a4', 'letter'] as const)('a quote on %s', (size) => {
  const paper = sampleQuote({ size });
  let read: ReadPdf;
  beforeAll(async () => {
    read = await open(paper);
  });

  it('has the size, the title, the language and the day', () => {
    // ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: letter is 8.5 x 11 in.
    const [width, height] = size === 'a4' ? [(210 / 25.4) * 72, (297 / 25.4) * 72] : [612, 792];
    for (const [wide, high] of read.sizes) {
      expect(wide).toBeCloseTo(width, 1);
      expect(high).toBeCloseTo(height, 1);
    }
    expect([read.title, read.language]).toEqual([paper.title, 'en']);
    expect(read.created).toMatch(/^D:20261125000000/);
  });

  it('reads in the order in which it is read aloud', () => {
    const words = [
      paper.letterhead.name,
      'Meridian Row Library Trust',
      'Valid until',
      paper.subject ?? '',
      'Dear Ms Hartwright',
      'Description',
      'Reading desk',
      'Wood of the seats',
      'Options',
      'Sum of lines',
      'Payments',
      'Terms',
      'Acceptance',
      'Signature',
    ];
    const places = placesIn(read.pages.join('\n'), words);
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((one, other) => one - other));
  });

  it('shows every total of its model, and every line', () => {
    const text = plain(read.pages.join('\n'));
    for (const { label, value } of paper.totals) expect(text).toContain(plain(`${label} ${value}`));
    for (const { part, due, amount } of paper.schedule?.rows ?? [])
      expect(text).toContain(plain(`${part} ${due} ${amount}`));
    for (const line of paper.lines?.groups.flatMap(({ lines }) => lines) ?? [])
      for (const word of [line.description, ...line.details, line.amount ?? ''])
        expect(text).toContain(plain(word));
  });

  it('is tagged: headings in steps, tables with heads, pictures with words, links', () => {
    expect(read.isTagged).toBe(true);
    const tags = flatTags(read.tags);
    const count = (role: string) => tags.filter((tag) => tag.role === role).length;
    const headings = tags.map(({ role }) => role).filter((role) => /^H\d$/.test(role));
    expect(headings).toEqual(['H1', 'H2', 'H2', 'H2', 'H2', 'H2']);
    expect(count('Table')).toBe(4);
    expect(count('THead')).toBeGreaterThanOrEqual(3);
    expect(count('TH')).toBeGreaterThanOrEqual(5 + 3 + 3);
    const figures = tags.filter(({ role }) => role === 'Figure').map(({ alternative }) => alternative);
    const words = [paper.letterhead.logo?.alternative, SAMPLE_PHOTOGRAPH.alternative];
    expect(figures).toEqual([...words, SAMPLE_PHOTOGRAPH.alternative]);
    expect(read.links).toEqual([
      'tel:+15550142',
      'mailto:bench@hollinfell.example',
      'https://hollinfell.example/',
      paper.acceptance?.link?.address,
    ]);
  });

  it('brings its fonts along', () => {
    const names = read.fonts.map(({ name }) => name.replace(/^[A-Z]{6}\+/, '').split('-')[0]);
    expect(new Set(names)).toEqual(new Set(['Vollkorn', 'NationalPark']));
    expect(read.fonts.every(({ isEmbedded }) => isEmbedded)).toBe(true);
  });

  it('numbers its pages', () => {
    const { length } = read.pages;
    expect(read.pages.map((page, at) => plain(page).includes(`Page ${at + 1} of ${length}`))).toEqual(
      read.pages.map(() => true),
    );
  });
});

describe('the window of the envelope', () => {
  // DIN 5008 form B: the field is 85 x 45 mm, 20 mm from the left and 45 mm from the top; nothing else stands in it.
  const DIN = { left: 20, right: 105, top: 45, bottom: 90 };
  // A #10 envelope is 9 1/2 x 4 1/8 in, its window 4 1/2 x 1 1/8 in, 7/8 in from the left and 1/2 in from the bottom
  // (sizes of the envelope trade, from memory). Letter folded in three lies at the bottom of it, so that the window
  // begins 1 1/2 in + (11 in / 3 - 2 1/8 in) = 2.04 in below the upper edge; sideways the paper slides by 1 in.
  const NUMBER_TEN = { left: 22.2, right: 111.1, top: 51.8, bottom: 80.4 };

  it.each([
    ['a4', DIN],
    ['letter', NUMBER_TEN],
  ] as const)('on %s shows the addressee, whole, and only the sender besides', async (size, window) => {
    const paper = sampleQuote({ size });
    const addressee = [...paper.addressee, 'Reading hall, second floor', 'Zedland'];
    const { placed } = await open({ ...paper, addressee });
    const inside = placed.filter(
      ({ left, right, top, bottom }) =>
        right > window.left && left < window.right && bottom > window.top && top < window.bottom,
    );
    const whole = inside.filter(
      ({ left, right, top, bottom }) =>
        left >= window.left && right <= window.right && top >= window.top && bottom <= window.bottom,
    );
    const shown = plain(whole.map(({ text }) => text).join(' '));
    for (const line of addressee) expect(shown).toContain(plain(line));
    const sender = [paper.letterhead.name, ...paper.letterhead.address].join(' · ');
    const allowed = plain([sender, ...addressee].join(' '));
    for (const { text } of inside) expect(allowed).toContain(plain(text));
  });
});

describe('a long table', () => {
  it('repeats its heads and carries its sums from page to page', async () => {
    const paper = sampleQuote({ size: 'letter', lines: 100 });
    const { pages } = await open(paper);
    expect(pages.length).toBeGreaterThan(5);
    const lines = paper.lines?.groups.flatMap((group) => group.lines) ?? [];
    const sums = new Set(lines.flatMap(({ carried }) => (carried === null ? [] : [carried])));
    const broken = pages.slice(0, -1).filter((page) => page.includes('Carried over'));
    expect(broken.length).toBeGreaterThan(5);
    for (const [at, page] of broken.entries()) {
      const over = /Carried over (\$[\d,.]+)/.exec(plain(page))?.[1] ?? '';
      const next = plain(pages[at + 1] ?? '');
      expect(sums.has(over)).toBe(true);
      expect(next).toContain('No. Description Quantity Price Amount');
      expect(next).toContain(`Brought forward ${over}`);
      // The sum is that of the last line on the page.
      const last = lines.findLast(({ carried }) => carried === over);
      expect(next).toContain(`${Number(last?.position) + 1} `);
    }
    expect(pages.slice(broken.length).some((page) => page.includes('Carried over'))).toBe(false);
    expect(pages[0]).not.toContain('Brought forward');
  });
});

describe('every kind of paper', () => {
  it.each(SAMPLE_PAPERS.map((paper) => [paper.kind, paper] as const))(
    '%s is one whole page',
    async (_, paper) => {
      const read = await open(paper);
      expect(read.pages).toHaveLength(1);
      const text = plain(read.pages[0] ?? '');
      for (const { label, value } of paper.facts) expect(text).toContain(plain(`${label} ${value}`));
      for (const { label, value } of paper.totals) expect(text).toContain(plain(`${label} ${value}`));
      for (const { label, value } of paper.payment?.facts ?? [])
        expect(text).toContain(plain(`${label} ${value}`));
      expect(flatTags(read.tags).some(({ role }) => role === 'H1')).toBe(true);
    },
  );

  it('delivery note shows no price', async () => {
    const { pages } = await open(SAMPLE_DELIVERY_NOTE);
    expect(plain(pages[0] ?? '')).toContain('No. Description Quantity 1 Hall bench');
    expect(pages[0]).not.toMatch(/€|Price|Amount/);
  });
});

describe('what people write', () => {
  it('stands on the paper as written, whatever it looks like', async () => {
    const hostile = [
      '#panic("x") #import "@preview/cetz:0.3.0" $sum$ *bold* _it_ `raw` <label> @ref // no comment /* none */',
      '\\u{41} \\n [content] {code} = Heading #read("/etc/passwd") ~ --- "quoted" \'single\' ...',
      '4/4 and 3/4" and 1 1/2" and 1/2 an hour',
    ];
    const { pages } = await open({ ...SAMPLE_RECEIPT, intro: hostile, subject: hostile[0] ?? '' });
    const text = plain(pages.join(' '));
    for (const words of hostile) expect(text).toContain(plain(words));
  });

  it('stays on the paper when it has no spaces, and is copied unbroken', async () => {
    const run = 'Abcdefghi1'.repeat(40);
    const facts = [{ label: 'Long', value: run }];
    const { pages } = await open({ ...SAMPLE_RECEIPT, subject: run, facts, addressee: [run], intro: [run] });
    const text = pages.join('').replace(/\s/g, '');
    expect(text.split(run).length - 1).toBe(4);
  });

  it('is drawn whenever the list of drawn characters says so', async () => {
    // The typesetter refuses a paper with a character that no font has: an independent reading of the same fonts.
    const drawn = [...drawnCharacters()]
      .map((point) => String.fromCodePoint(point))
      .filter((sign) => cleanText(sign, 'kept') === sign);
    expect(drawn.length).toBeGreaterThan(5000);
    const signs = drawn.filter((_, at) => at % 7 === 0);
    const rows = Array.from({ length: Math.ceil(signs.length / 20) }, (_, at) =>
      signs.slice(at * 20, at * 20 + 20).join(' '),
    );
    const bytes = await renderer.render({ ...SAMPLE_RECEIPT, intro: rows }, SAMPLE_PICTURES);
    expect(bytes.length).toBeGreaterThan(10_000);
  });
});
