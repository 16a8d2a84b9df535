import { idFault, renameInFormula } from '@scantling/costing';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import { byKind, type DraftState } from './bill-draft.ts';
import type { BillKind } from './bill-fields.ts';
import type { RowCells } from './bill-text.ts';

type Rows = readonly GridRow[];
type Names = ReadonlyMap<string, string>;

/** Ids that became others; one that still stands somewhere, or that is there twice, is left to be mended by hand. */
function renamedIn(before: Rows, after: Rows, isUsable: (id: string) => boolean): Names {
  if (before === after) return new Map();
  const idOf = ({ cells }: GridRow): string => cells.id ?? '';
  const was = new Map(before.map((row) => [row.key, idOf(row)]));
  const ids = after.map(idOf);
  return new Map(
    after.flatMap((row) => {
      const [from, to] = [was.get(row.key) ?? '', idOf(row)];
      const isRenamed = from !== '' && to !== '' && from !== to && isUsable(to);
      // The old id may stand in a row that took it in the same step, as two that change names do.
      const isLeft = after.every(
        (one) => idOf(one) !== from || ![undefined, '', from].includes(was.get(one.key)),
      );
      const isClear = isLeft && ids.filter((id) => id === to).length === 1;
      return isRenamed && isClear ? [[from, to] as const] : [];
    }),
  );
}

const MATERIALS = ['material', 'edgeBand.material', 'veneer.material'];

interface Renaming {
  readonly parameters: Names;
  readonly assemblies: Names;
  readonly parts: Names;
}

function renamedCells(kind: BillKind | 'parameters', cells: RowCells, names: Renaming): RowCells {
  const entries = Object.entries(cells).map(([path, text]) => {
    if (path === 'assembly') return [path, names.assemblies.get(text) ?? text];
    if (kind === 'finishes' && path === 'parts')
      return [path, text.replace(/\S+/g, (id) => names.parts.get(id) ?? id)];
    if (MATERIALS.includes(path) && names.parameters.has(text)) return [path, names.parameters.get(text)];
    return [path, text.startsWith('=') ? renameInFormula(text, names.parameters) : text];
  });
  return Object.fromEntries(entries);
}

/** The draft after a change, with the parameters, assemblies and parts that got another id renamed where they are used. */
export function withRenamedIds(before: DraftState, after: DraftState): DraftState {
  const anyId = (): boolean => true;
  const names: Renaming = {
    parameters: renamedIn(before.parameters, after.parameters, (id) => idFault(id) === null),
    assemblies: renamedIn(before.bill.assemblies, after.bill.assemblies, anyId),
    parts: renamedIn(before.bill.parts, after.bill.parts, (id) => !/\s/.test(id)),
  };
  if (names.parameters.size + names.assemblies.size + names.parts.size === 0) return after;
  const rename = (kind: BillKind | 'parameters', rows: Rows): Rows =>
    rows.map((row) => {
      const cells = renamedCells(kind, row.cells, names);
      const isSame = Object.entries(cells).every(([path, text]) => row.cells[path] === text);
      return isSame ? row : { ...row, cells };
    });
  return {
    ...after,
    parameters: rename('parameters', after.parameters),
    bill: byKind((kind) => rename(kind, after.bill[kind])),
  };
}
