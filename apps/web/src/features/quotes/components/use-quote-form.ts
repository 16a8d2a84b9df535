import { useEffect, useState } from 'react';
import type { Revision } from '../api/get-quote.ts';
import { keepQuote, keptQuote } from './kept-quote.ts';
import { type QuoteForm, quoteForm } from './quote-form.ts';

interface Drafting {
  readonly etag: string | null;
  readonly version: number;
  /** What is saved, as its fields say it. */
  readonly saved: QuoteForm;
  readonly form: QuoteForm;
  /** The changes were made before this page was opened. */
  readonly isBroughtBack: boolean;
}

function started(revision: Revision, etag: string | null): Drafting {
  const saved = quoteForm(revision);
  return { etag, version: revision.version, saved, form: saved, isBroughtBack: false };
}

function broughtBack(revision: Revision, etag: string | null): Drafting {
  const fresh = started(revision, etag);
  const kept = keptQuote(sessionStorage, revision.id);
  return kept === null ? fresh : { ...fresh, ...kept, isBroughtBack: true };
}

/** The state of a draft's sheet: what is saved and what is changed. */
export function useQuoteForm(revision: Revision, etag: string | null) {
  const [state, setState] = useState(() => broughtBack(revision, etag));
  const isChanged = JSON.stringify(state.form) !== JSON.stringify(state.saved);
  // What somebody else saved is shown at once where nothing was changed here.
  if (!isChanged && revision.version > state.version) setState(started(revision, etag));
  const { form, version } = state;
  const id = revision.id;
  useEffect(() => {
    keepQuote(sessionStorage, id, isChanged ? { etag: state.etag, version, form } : null);
  }, [id, isChanged, state.etag, version, form]);
  return {
    ...state,
    isChanged,
    change: (part: Partial<QuoteForm>) => setState((now) => ({ ...now, form: { ...now.form, ...part } })),
    /** Begins anew from what is saved; the changes made here are given up. */
    startFrom: (saved: Revision, savedEtag: string | null) => setState(started(saved, savedEtag)),
    /** The changes made here go on as changes of what somebody else saved. */
    goOnFrom: (saved: Revision, savedEtag: string | null) =>
      setState((now) => ({ ...now, etag: savedEtag, version: saved.version })),
  };
}
