import { useEffect, useState } from 'react';
import type { GridUndo } from '../../../components/edit-grid/grid-edits.ts';
import {
  freshHistory,
  recorded,
  redone,
  type UndoHistory,
  undone,
} from '../../../components/edit-grid/undo-history.ts';
import type { Design } from '../api/get-design.ts';
import { type DraftState, draftOf } from './bill-draft.ts';
import { keepDraft, keptDraft } from './kept-draft.ts';
import { withRenamedIds } from './renamed-ids.ts';

type About = Pick<Design, 'code' | 'name' | 'description' | 'overallSize'>;

interface Drafting {
  readonly etag: string | null;
  readonly version: number;
  /** What is saved, as it would stand here unchanged. */
  readonly saved: DraftState;
  readonly savedAbout: About;
  readonly history: UndoHistory<DraftState>;
  readonly about: About;
  readonly note: string;
  /** The changes were kept from before. */
  readonly isBroughtBack: boolean;
}

const aboutOf = ({ code, name, description, overallSize }: About): About => ({
  code,
  name,
  description,
  overallSize,
});

function started(design: Design, etag: string | null): Drafting {
  const saved = draftOf(design, design.unitSystem);
  const about = aboutOf(design);
  return {
    etag,
    version: design.version,
    saved,
    savedAbout: about,
    history: freshHistory(saved),
    about,
    note: '',
    isBroughtBack: false,
  };
}

function broughtBack(design: Design, etag: string | null): Drafting {
  const fresh = started(design, etag);
  const kept = keptDraft(sessionStorage, design.id);
  if (kept === null) return fresh;
  const { state, ...rest } = kept;
  return { ...fresh, ...rest, history: recorded(fresh.history, state), isBroughtBack: true };
}

function differs({ history, saved, about, savedAbout }: Drafting): boolean {
  return history.present !== saved || JSON.stringify(about) !== JSON.stringify(savedAbout);
}

/** The state of a design's sheet: what is saved, what is changed, and the way back and forth. */
export function useDesignDraft(design: Design, etag: string | null) {
  const [draft, setDraft] = useState(() => broughtBack(design, etag));
  const isChanged = differs(draft);
  // What somebody else saved is shown at once where nothing was changed here.
  if (!isChanged && design.version > draft.version) setDraft(started(design, etag));

  const { history, about, note, version } = draft;
  const id = design.id;
  useEffect(() => {
    const state = history.present;
    keepDraft(sessionStorage, id, isChanged ? { etag: draft.etag, version, about, note, state } : null);
  }, [id, isChanged, draft.etag, version, about, note, history.present]);

  const step = (take: (of: UndoHistory<DraftState>) => UndoHistory<DraftState>) =>
    setDraft((now) => ({ ...now, history: take(now.history) }));
  const undo: GridUndo = {
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    undo: () => step(undone),
    redo: () => step(redone),
  };
  return {
    ...draft,
    state: history.present,
    isChanged,
    undo,
    change: (next: DraftState) => step((of) => recorded(of, withRenamedIds(of.present, next))),
    setAbout: (next: About) => setDraft((now) => ({ ...now, about: aboutOf(next) })),
    setNote: (next: string) => setDraft((now) => ({ ...now, note: next })),
    /** Begins anew from what is saved; the changes made here are given up. */
    startFrom: (saved: Design, savedEtag: string | null) => setDraft(started(saved, savedEtag)),
    /** The changes made here go on as changes of what somebody else saved. */
    goOnFrom: (saved: Design, savedEtag: string | null) =>
      setDraft((now) => ({ ...now, etag: savedEtag, version: saved.version })),
    /** What stands here is saved now; the steps back stay. */
    isSaved: (saved: Design, savedEtag: string | null) =>
      setDraft((now) => ({
        ...now,
        etag: savedEtag,
        version: saved.version,
        saved: now.history.present,
        savedAbout: aboutOf(saved),
        about: aboutOf(saved),
        note: '',
        isBroughtBack: false,
      })),
  };
}
