import type { Difference } from '../../../components/record-editor/field-spec.ts';
import type { DraftState } from './bill-draft.ts';
import { BILL_FIELDS, BILL_KINDS, KIND_WORDS } from './bill-fields.ts';
import { valueWords } from './place-words.ts';

const NOTHING = 'nothing';

/** Where two bills differ, both written in the same system, row by row of the same id. */
export function billDifferences(mine: DraftState, theirs: DraftState): readonly Difference[] {
  return BILL_KINDS.flatMap((kind): Difference[] => {
    const theirRows = new Map(theirs.bill[kind].map((row) => [row.cells.id ?? '', row.cells]));
    const myIds = new Set(mine.bill[kind].map(({ cells }) => cells.id ?? ''));
    const changed = mine.bill[kind].flatMap(({ cells }): Difference[] => {
      const id = cells.id ?? '';
      const other = theirRows.get(id);
      if (other === undefined)
        return [{ label: valueWords(kind, id, ''), mine: cells.name || 'a row', theirs: 'no such row' }];
      return BILL_FIELDS[kind]
        .filter(({ path }) => (cells[path] ?? '') !== (other[path] ?? ''))
        .map(({ path }) => ({
          label: valueWords(kind, id, path),
          mine: cells[path] || NOTHING,
          theirs: other[path] || NOTHING,
        }));
    });
    const added = [...theirRows]
      .filter(([id]) => !myIds.has(id))
      .map(([id, cells]) => ({
        label: valueWords(kind, id, ''),
        mine: 'no such row',
        theirs: cells.name || 'a row',
      }));
    const order = (state: DraftState) => state.bill[kind].map(({ cells }) => cells.id).join(' ');
    const isReordered = changed.length + added.length === 0 && order(mine) !== order(theirs);
    const moved = isReordered
      ? [{ label: `${KIND_WORDS[kind].title}, order of rows`, mine: order(mine), theirs: order(theirs) }]
      : [];
    return [...changed, ...added, ...moved];
  });
}
