import { useEffect, useState } from 'react';
import type { GridUndo } from '../../../components/edit-grid/grid-edits.ts';
import { redone, undone } from '../../../components/edit-grid/undo-history.ts';
import type { Revision } from '../api/get-quote.ts';
import { broughtBack, changed, savedAs, started, stepped } from './drafting.ts';
import { keepQuote, keptQuote } from './kept-quote.ts';
import type { QuoteForm } from './quote-form.ts';

/** The state of a draft's sheet: what is saved and what is changed. */
export function useQuoteForm(revision: Revision, etag: string | null) {
  const [state, setState] = useState(() =>
    broughtBack(revision, etag, keptQuote(sessionStorage, revision.id)),
  );
  const isChanged = JSON.stringify(state.form) !== JSON.stringify(state.saved);
  // What somebody else saved is shown at once where nothing was changed here.
  if (!isChanged && revision.version > state.version) setState(started(revision, etag));
  const { form, version } = state;
  const id = revision.id;
  useEffect(() => {
    keepQuote(sessionStorage, id, isChanged ? { etag: state.etag, version, form } : null);
  }, [id, isChanged, state.etag, version, form]);
  const undo: GridUndo = {
    canUndo: state.history.past.length > 0,
    canRedo: state.history.future.length > 0,
    undo: () => setState((now) => stepped(now, undone)),
    redo: () => setState((now) => stepped(now, redone)),
  };
  return {
    ...state,
    isChanged,
    undo,
    /** `typing` names what letters are typed into, where they are to be one step of the lines. */
    change: (part: Partial<QuoteForm>, typing: string | null = null) =>
      setState((now) => changed(now, part, typing)),
    isSaved: (sent: QuoteForm, saved: Revision, savedEtag: string | null) =>
      setState((now) => savedAs(now, sent, saved, savedEtag)),
    /** Begins anew from what is saved; the changes made here are given up. */
    startFrom: (saved: Revision, savedEtag: string | null) => setState(started(saved, savedEtag)),
    /** The changes made here go on as changes of what somebody else saved. */
    goOnFrom: (saved: Revision, savedEtag: string | null) =>
      setState((now) => ({ ...now, etag: savedEtag, version: saved.version })),
  };
}
