import { idFault, type Parameter, type Variant } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { type RowCells, rowCells } from './bill-text.ts';
import { FRESH_PARAMETER, parameterFields, valueField, variantPath } from './parameter-fields.ts';
import { freeId } from './row-ids.ts';

export interface ParameterRows {
  readonly parameters: readonly GridRow[];
  readonly variants: readonly GridRow[];
}

interface Choosable {
  readonly parameters: readonly Parameter[];
  readonly variants: readonly Variant[];
}

/** Parameters and variants as they stand in their grids. */
export function parameterRows({ parameters, variants }: Choosable, system: LengthSystem): ParameterRows {
  const rows = parameters.map((parameter) => ({
    key: newIdempotencyKey(),
    cells: rowCells(parameter, parameterFields(parameter.kind), system),
  }));
  return {
    parameters: rows,
    variants: variants.map((variant) => ({
      key: newIdempotencyKey(),
      cells: variantCells(variant, parameters, rows, system),
    })),
  };
}

function variantCells(
  { id, name, values }: Variant,
  parameters: readonly Parameter[],
  rows: readonly GridRow[],
  system: LengthSystem,
): RowCells {
  const cells: Record<string, string> = { id, name };
  parameters.forEach((parameter, at) => {
    const row = rows[at];
    const value = values[parameter.id];
    if (row === undefined || value === undefined) return;
    const path = variantPath(row);
    const field = valueField(path, parameter.label, parameter.kind, false);
    Object.assign(cells, rowCells({ [path]: value }, [field], system));
  });
  return cells;
}

/** A name as formulas can use it: "Leg thickness" as "leg_thickness". */
function nameInFormulas(label: string): string {
  const words = label
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^[^a-z]+|_+$/g, '')
    .slice(0, 36);
  if (words === '') return 'size';
  return idFault(words) === null ? words : `${words}_size`;
}

/** Gives every named parameter without an id one made of its name. */
export function withParameterIds(rows: readonly GridRow[]): readonly GridRow[] {
  const taken = new Set(rows.map(({ cells }) => cells.id ?? '').filter(Boolean));
  return rows.map((row) => {
    const { id = '', label = '' } = row.cells;
    if (id !== '' || label.trim() === '') return row;
    const own = freeId(nameInFormulas(label), taken, '');
    taken.add(own);
    return { ...row, cells: { ...row.cells, id: own } };
  });
}

/** A new row; a copy keeps all but the id, which is made anew of the name. */
export function freshParameter(from?: GridRow): GridRow {
  return { key: newIdempotencyKey(), cells: from ? { ...from.cells, id: '' } : FRESH_PARAMETER };
}

export function freshVariant(from?: GridRow): GridRow {
  return { key: newIdempotencyKey(), cells: from ? { ...from.cells, id: '' } : {} };
}
