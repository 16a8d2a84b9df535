import { exampleRevision, getQuoteRevision } from '@scantling/contracts';
import { describe, expect, it } from 'vitest';
import { redone, undone } from '../../../components/edit-grid/undo-history.ts';
import { broughtBack, changed, savedAs, started, stepped } from './drafting.ts';
import { freshLine } from './line-cells.ts';
import { bodyOf } from './quote-form.ts';

const REVISION = getQuoteRevision.answer.parse(exampleRevision);
const SHEET = started(REVISION, '"3"');
const ONE_MORE = [...SHEET.form.lines, freshLine('full')];

function savedRevision(sheet: typeof SHEET): typeof REVISION {
  const { title, clientId, enquiryId, draft } = bodyOf(sheet.form);
  return getQuoteRevision.answer.parse({
    ...exampleRevision,
    title,
    clientId,
    enquiryId,
    draft: JSON.parse(JSON.stringify(draft)),
    version: 4,
  });
}

describe('the sheet of a draft', () => {
  it('takes steps of the lines back and forth and leaves its other fields alone', () => {
    const titled = changed(changed(SHEET, { lines: ONE_MORE }, null), { title: 'Two benches' }, null);
    const back = stepped(titled, undone);
    expect(back.form.lines).toEqual(SHEET.form.lines);
    expect(back.form.title).toBe('Two benches');
    expect(stepped(back, redone).form.lines).toBe(ONE_MORE);
  });

  it('takes the letters typed beside a line back as one step', () => {
    const letters = ['O', 'Oi', 'Oil'].map((details) =>
      SHEET.form.lines.map((line) => ({ ...line, cells: { ...line.cells, details } })),
    );
    const typed = letters.reduce((sheet, lines) => changed(sheet, { lines }, 'details of bench'), SHEET);
    expect(typed.form.lines[0]?.cells.details).toBe('Oil');
    expect(stepped(typed, undone).form.lines).toEqual(SHEET.form.lines);
    const other = changed(typed, { lines: SHEET.form.lines }, 'details of cushion');
    expect(stepped(other, undone).form.lines).toBe(typed.form.lines);
  });

  it('keeps its steps when it is saved, and the changes made while it was on its way', () => {
    const moved = changed(SHEET, { lines: SHEET.form.lines.toReversed() }, null);
    const revision = savedRevision(moved);
    const saved = savedAs(moved, moved.form, revision, '"4"');
    expect([saved.etag, saved.version, saved.form]).toEqual(['"4"', 4, saved.saved]);
    expect(stepped(saved, undone).form.lines).toEqual(SHEET.form.lines);
    const typedOn = changed(moved, { title: 'Typed meanwhile' }, null);
    const late = savedAs(typedOn, moved.form, revision, '"4"');
    expect([late.form.title, late.saved.title]).toEqual(['Typed meanwhile', REVISION.title]);
  });

  it('brings back what the window kept, as a step that can be taken back', () => {
    const form = { ...SHEET.form, lines: ONE_MORE };
    const back = broughtBack(REVISION, '"3"', { etag: '"2"', version: 2, form });
    expect([back.isBroughtBack, back.etag, back.form]).toEqual([true, '"2"', form]);
    expect(stepped(back, undone).form.lines).toEqual(SHEET.form.lines);
  });
});
