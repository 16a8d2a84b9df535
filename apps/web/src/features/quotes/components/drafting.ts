import { freshHistory, recorded, type UndoHistory } from '../../../components/edit-grid/undo-history.ts';
import type { Revision } from '../api/get-quote.ts';
import type { KeptQuote } from './kept-quote.ts';
import type { LineForm } from './line-cells.ts';
import { type QuoteForm, quoteForm } from './quote-form.ts';

type Lines = readonly LineForm[];

/** A draft's sheet: what is saved, what is changed, and the steps of its lines. */
export interface Drafting {
  readonly etag: string | null;
  readonly version: number;
  /** What is saved, as its fields say it. */
  readonly saved: QuoteForm;
  readonly form: QuoteForm;
  /** The steps of the lines, which can be taken back. */
  readonly history: UndoHistory<Lines>;
  /** What is being typed outside the grid: its letters are one step together. */
  readonly typing: string | null;
  /** The changes were made before this page was opened. */
  readonly isBroughtBack: boolean;
}

/** The sheet of a revision as it is saved. */
export function started(revision: Revision, etag: string | null): Drafting {
  const saved = quoteForm(revision);
  return {
    etag,
    version: revision.version,
    saved,
    form: saved,
    history: freshHistory(saved.lines),
    typing: null,
    isBroughtBack: false,
  };
}

/** The same with the changes that this window kept. */
export function broughtBack(revision: Revision, etag: string | null, kept: KeptQuote | null): Drafting {
  const fresh = started(revision, etag);
  if (kept === null) return fresh;
  return { ...fresh, ...kept, history: recorded(fresh.history, kept.form.lines), isBroughtBack: true };
}

/** `typing` names what letters are typed into; letters typed into one place are one step of the lines. */
export function changed(now: Drafting, part: Partial<QuoteForm>, typing: string | null): Drafting {
  const form = { ...now.form, ...part };
  const { lines } = part;
  if (lines === undefined) return { ...now, form };
  const isSameStep = typing !== null && typing === now.typing;
  const history = isSameStep ? { ...now.history, present: lines } : recorded(now.history, lines);
  return { ...now, form, history, typing };
}

/** The lines one step back or forth. */
export function stepped(now: Drafting, take: (of: UndoHistory<Lines>) => UndoHistory<Lines>): Drafting {
  const history = take(now.history);
  return { ...now, history, typing: null, form: { ...now.form, lines: history.present } };
}

/** What was sent is saved; what was changed while it was on its way stays, as changes of it. */
export function savedAs(now: Drafting, sent: QuoteForm, revision: Revision, etag: string | null): Drafting {
  const fresh = started(revision, etag);
  const { form, history, typing } = now;
  if (form !== sent) return { ...fresh, form, history, typing };
  const isSame = JSON.stringify(fresh.form.lines) === JSON.stringify(form.lines);
  return {
    ...fresh,
    history: isSame ? { ...history, present: fresh.form.lines } : recorded(history, fresh.form.lines),
  };
}
