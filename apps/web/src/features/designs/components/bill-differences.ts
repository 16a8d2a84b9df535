import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import type { Difference } from '../../../components/record-editor/field-spec.ts';
import type { DraftState } from './bill-draft.ts';
import { BILL_FIELDS, BILL_KINDS, KIND_WORDS } from './bill-fields.ts';
import { parameterFields, variantPath } from './parameter-fields.ts';
import { parameterWords, valueWords, variantWords } from './place-words.ts';

const NOTHING = 'nothing';

/** Rows of one grid: their values by names that mean the same in both drafts. */
interface Compared {
  readonly mine: readonly GridRow['cells'][];
  readonly theirs: readonly GridRow['cells'][];
  readonly paths: readonly string[];
  readonly nameOf: (cells: GridRow['cells']) => string | undefined;
  /** Where it is, in words. */
  readonly label: (cells: GridRow['cells'], path: string) => string;
  readonly title: string;
}

function rowDifferences({ mine, theirs, paths, nameOf, label, title }: Compared): Difference[] {
  const idOf = (cells: GridRow['cells']): string => cells.id ?? '';
  const theirRows = new Map(theirs.map((cells) => [idOf(cells), cells]));
  const myIds = new Set(mine.map(idOf));
  const changed = mine.flatMap((cells): Difference[] => {
    const other = theirRows.get(idOf(cells));
    if (other === undefined)
      return [{ label: label(cells, ''), mine: nameOf(cells) || 'a row', theirs: 'no such row' }];
    return paths
      .filter((path) => (cells[path] ?? '') !== (other[path] ?? ''))
      .map((path) => ({
        label: label(cells, path),
        mine: cells[path] || NOTHING,
        theirs: other[path] || NOTHING,
      }));
  });
  const added = [...theirRows]
    .filter(([id]) => !myIds.has(id))
    .map(([, cells]) => ({
      label: label(cells, ''),
      mine: 'no such row',
      theirs: nameOf(cells) || 'a row',
    }));
  const order = (rows: readonly GridRow['cells'][]): string => rows.map(idOf).join(' ');
  const isReordered = changed.length + added.length === 0 && order(mine) !== order(theirs);
  const moved = isReordered
    ? [{ label: `${title}, order of rows`, mine: order(mine), theirs: order(theirs) }]
    : [];
  return [...changed, ...added, ...moved];
}

const cellsOf = (rows: readonly GridRow[]) => rows.map(({ cells }) => cells);

/** The variants with their values by the id of the parameter, which both drafts share. */
function variantsById({ parameters, variants }: DraftState): GridRow['cells'][] {
  return variants.map(({ cells: { id = '', name = '', ...cells } }) => ({
    id,
    name,
    ...Object.fromEntries(
      parameters.map((row) => [`of ${row.cells.id ?? ''}`, cells[variantPath(row)] ?? '']),
    ),
  }));
}

/** Where two drafts differ, both written in the same system, row by row of the same id. */
export function billDifferences(mine: DraftState, theirs: DraftState): readonly Difference[] {
  const ids = [...mine.parameters, ...theirs.parameters].map(({ cells }) => `of ${cells.id ?? ''}`);
  const parameters = rowDifferences({
    mine: cellsOf(mine.parameters),
    theirs: cellsOf(theirs.parameters),
    paths: parameterFields('length').map(({ path }) => path),
    nameOf: ({ label }) => label,
    label: ({ id = '' }, path) => parameterWords(id, path),
    title: 'Parameters',
  });
  const variants = rowDifferences({
    mine: variantsById(mine),
    theirs: variantsById(theirs),
    paths: ['name', ...new Set(ids)],
    nameOf: ({ name }) => name,
    label: ({ name = '' }, path) => variantWords(name, path.replace(/^of /, '')),
    title: 'Variants',
  });
  const ofBill = BILL_KINDS.flatMap((kind) =>
    rowDifferences({
      mine: cellsOf(mine.bill[kind]),
      theirs: cellsOf(theirs.bill[kind]),
      paths: BILL_FIELDS[kind].map(({ path }) => path),
      nameOf: ({ name }) => name,
      label: ({ id = '' }, path) => valueWords(kind, id, path),
      title: KIND_WORDS[kind].title,
    }),
  );
  return [...parameters, ...variants, ...ofBill];
}
