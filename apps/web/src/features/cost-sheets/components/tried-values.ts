import { undatedKey } from '@scantling/figures';
import { z } from 'zod';
import { freshHistory, type UndoHistory } from '../../../components/edit-grid/undo-history.ts';

/** Values tried at leaves, by key, in the order in which they were first tried. */
export type TriedValues = Readonly<Record<string, string>>;

export const NOTHING_TRIED: TriedValues = {};

/** The values with one more, another one, or one less (null). */
export function withTried(values: TriedValues, leaf: string, value: string | null): TriedValues {
  const key = undatedKey(leaf);
  const before = Object.keys(values).find((known) => undatedKey(known) === key);
  if (value === null) {
    if (before === undefined) return values;
    const { [before]: _gone, ...rest } = values;
    return rest;
  }
  if (before !== undefined && values[before] === value) return values;
  return { ...values, [before ?? leaf]: value };
}

const valuesSchema = z.record(z.string(), z.string());
const keptSchema = z.object({
  /** Changes with the shape of what is kept, so that another version of this page leaves it alone. */
  shape: z.literal('tried-values-1'),
  isOn: z.boolean(),
  past: z.array(valuesSchema),
  present: valuesSchema,
  future: z.array(valuesSchema),
});

/** Whether values are tried on a sheet just now, and which, with the way back. */
export interface Trial {
  readonly isOn: boolean;
  readonly history: UndoHistory<TriedValues>;
}

const keyOf = (sheetId: string): string => `tried-values:${sheetId}`;
const STEPS_KEPT = 30;

/** Keeps what is tried in this window of the browser, through reloads; nothing of it is stored anywhere else. */
export function keepTrial(storage: Storage, sheetId: string, { isOn, history }: Trial): void {
  const { past, present, future } = history;
  try {
    if (!isOn && Object.keys(present).length === 0) storage.removeItem(keyOf(sheetId));
    else
      storage.setItem(
        keyOf(sheetId),
        JSON.stringify({
          shape: 'tried-values-1',
          isOn,
          past: past.slice(-STEPS_KEPT),
          present,
          future: future.slice(0, STEPS_KEPT),
        }),
      );
  } catch {
    // A full or forbidden storage keeps nothing; what is tried still stands on the screen.
  }
}

export function keptTrial(storage: Storage, sheetId: string): Trial {
  const none = { isOn: false, history: freshHistory(NOTHING_TRIED) };
  const text = storage.getItem(keyOf(sheetId));
  if (text === null) return none;
  try {
    const read = keptSchema.safeParse(JSON.parse(text));
    if (!read.success) return none;
    const { isOn, past, present, future } = read.data;
    return { isOn, history: { past, present, future } };
  } catch {
    return none;
  }
}
