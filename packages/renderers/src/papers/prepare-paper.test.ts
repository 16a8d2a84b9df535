import type { Paper } from '@scantling/quoting';
import { describe, expect, it } from 'vitest';
import { PaperCharacterError, PaperPictureError } from './paper-errors.ts';
import { preparePaper } from './prepare-paper.ts';
import { SAMPLE_INVOICE, SAMPLE_RECEIPT } from './samples/sample-papers.ts';
import { SAMPLE_PICTURES } from './samples/sample-workshop.ts';

const plain: Paper = { ...SAMPLE_RECEIPT, letterhead: { ...SAMPLE_RECEIPT.letterhead, logo: null } };
const NONE = new Map<string, Uint8Array>();
const prepared = (paper: Paper): Paper => JSON.parse(preparePaper(paper, NONE).json);

describe('a paper made ready for the template', () => {
  it('has its texts cleaned and its paragraphs kept', () => {
    const intro = ['One\r\ntwo\u2028three\u0007 \u202egnorw\u202c \ud800end'];
    const { subject, intro: clean } = prepared({ ...plain, intro, subject: 'A\tB\nC\u0000' });
    expect(subject).toBe('A B C');
    expect(clean).toEqual(['One\ntwo\nthree gnorw end']);
  });

  it('composes what was typed in parts, so that one glyph draws it', () => {
    expect(prepared({ ...plain, subject: 'Sche\u0301ma' }).subject).toBe('Schéma');
  });

  it.each([
    ['lines.groups.0.lines.0.description', '\u5c71'],
    ['addressee.0', '\u05d0'],
    ['facts.1.value', '\u{1f9ff}\u{e000}'],
  ])('names the place %s of a character that no font has', (field, text) => {
    const [, , , index] = field.split('.');
    const lines = SAMPLE_INVOICE.lines;
    const first = lines?.groups[0]?.lines[0];
    if (lines === null || first === undefined) throw new Error('the sample has a line');
    const paper: Paper =
      index !== undefined
        ? {
            ...plain,
            lines: {
              ...lines,
              groups: [
                { heading: null, note: null, subtotal: null, lines: [{ ...first, description: text }] },
              ],
            },
          }
        : field.startsWith('addressee')
          ? { ...plain, addressee: [text] }
          : {
              ...plain,
              facts: [
                { label: 'Number', value: '1' },
                { label: 'For', value: text },
              ],
            };
    const failure = (() => {
      try {
        return preparePaper(paper, NONE);
      } catch (error) {
        return error;
      }
    })();
    expect(failure).toBeInstanceOf(PaperCharacterError);
    expect(failure).toMatchObject({ field, character: Array.from(text).at(-1) });
  });

  it('takes signs, fractions, emoji and the scripts of Europe', () => {
    const subject = 'Ø ½ ⅝ 3″ − × → ✓ ☐ ≈ µ Ω Škoda Łódź Αθήνα Київ 🪵 👩\u200d🔧 ❤\ufe0f 👍🏽 🇮🇪';
    expect(prepared({ ...plain, subject }).subject).toBe(subject.normalize('NFC'));
  });

  it('leads nowhere but to the web, to mail and to telephones', () => {
    for (const link of ['javascript:alert(1)', 'file:///etc/passwd', 'https://a b', 'data:text/html,x', ''])
      expect(() =>
        preparePaper(
          { ...plain, letterhead: { ...plain.letterhead, contact: [{ label: 'Web', text: 'x', link }] } },
          NONE,
        ),
      ).toThrow('letterhead.contact.0.link is no address');
  });

  it('refuses a day that is none', () => {
    expect(() => preparePaper({ ...plain, date: '2026-02-30' }, NONE)).toThrow('no day of the calendar');
  });
});

describe('the pictures of a paper', () => {
  it('are given by what they are, once each', () => {
    const { pictures } = preparePaper(SAMPLE_RECEIPT, SAMPLE_PICTURES);
    expect(pictures.map(({ file, field }) => [file.length, file.slice(-4), field])).toEqual([
      [68, '.png', 'letterhead.logo'],
    ]);
  });

  it('are refused where they are missing, none, or say nothing to who cannot see them', () => {
    const logo = { sha256: 'ab', alternative: 'Mark', caption: null };
    const paper: Paper = { ...plain, letterhead: { ...plain.letterhead, logo } };
    const svg = new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>');
    expect(() => preparePaper(paper, NONE)).toThrow(PaperPictureError);
    expect(() => preparePaper(paper, new Map([['ab', svg]]))).toThrow('letterhead.logo is no PNG');
    const silent = { ...paper, letterhead: { ...paper.letterhead, logo: { ...logo, alternative: ' ' } } };
    const png = [...SAMPLE_PICTURES.values()][0] ?? new Uint8Array();
    expect(() => preparePaper(silent, new Map([['ab', png]]))).toThrow('no alternative text');
  });
});
