/** What was, is and was undone of one state. Steps hold whole states, which share what did not change. */
export interface UndoHistory<State> {
  readonly past: readonly State[];
  readonly present: State;
  /** Undone steps, the next to redo first. */
  readonly future: readonly State[];
}

const MOST_STEPS = 200;

export function freshHistory<State>(present: State): UndoHistory<State> {
  return { past: [], present, future: [] };
}

/** A step; what was undone before it cannot be redone any more. */
export function recorded<State>(history: UndoHistory<State>, next: State): UndoHistory<State> {
  if (next === history.present) return history;
  return { past: [...history.past, history.present].slice(-MOST_STEPS), present: next, future: [] };
}

export function undone<State>(history: UndoHistory<State>): UndoHistory<State> {
  const { past, present, future } = history;
  const before = past.at(-1);
  if (before === undefined) return history;
  return { past: past.slice(0, -1), present: before, future: [present, ...future] };
}

export function redone<State>(history: UndoHistory<State>): UndoHistory<State> {
  const { past, present, future } = history;
  const [after, ...later] = future;
  if (after === undefined) return history;
  return { past: [...past, present], present: after, future: later };
}
