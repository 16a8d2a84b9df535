import type { LengthSystem } from '@scantling/units';
import type { EditColumn, GridRow } from '../../../components/edit-grid/edit-column.ts';
import type { RecordChoices } from '../api/list-bill-choices.ts';
import { type BillChoices, columnOf } from './bill-columns.ts';
import { kindOf, parameterFields, valueField, variantPath } from './parameter-fields.ts';

/** What values of parameters are chosen from: records only, for a parameter names no other as its material. */
function recordsOnly(records: RecordChoices | undefined): BillChoices {
  const nothing = { materials: [], grades: [], machines: [], assemblies: [], parts: [] };
  return { ...nothing, materials: records?.materials ?? [] };
}

/** Values stand in the unit of their own row, so that the head names none. */
const OF_KIND = ['value', 'least', 'greatest'];
const WIDTHS: Readonly<Record<string, number>> = { label: 190, id: 130, value: 210, choices: 220 };

/** The columns of the parameters; how a value is read and chosen depends on the kind in its row. */
export function parameterColumns(
  system: LengthSystem,
  records: RecordChoices | undefined,
): readonly EditColumn[] {
  const from = recordsOnly(records);
  return parameterFields('number').map((field): EditColumn => {
    const column = columnOf(field, system, from);
    const shared = { header: field.label, width: WIDTHS[field.path] ?? column.width };
    if (!OF_KIND.includes(field.path)) return { ...column, ...shared };
    const inRow = (row: GridRow | undefined): EditColumn => {
      const own = parameterFields(kindOf(row) ?? 'length').find(({ path }) => path === field.path) ?? field;
      return { ...columnOf(own, system, from), ...shared };
    };
    return { ...column, ...shared, inRow };
  });
}

const NAME: EditColumn = {
  id: 'name',
  header: 'Name',
  width: 190,
  kind: 'text',
  read: (text) => ({ text }),
};

/** The columns of the variants: one for each parameter that can be set, or that a variant sets all the same. */
export function variantColumns(
  parameters: readonly GridRow[],
  variants: readonly GridRow[],
  system: LengthSystem,
  records: RecordChoices | undefined,
): readonly EditColumn[] {
  const from = recordsOnly(records);
  const columns = parameters.flatMap((row): EditColumn[] => {
    const kind = kindOf(row);
    const path = variantPath(row);
    const { label = '', id = '', value = '' } = row.cells;
    const isSet = variants.some(({ cells }) => (cells[path] ?? '') !== '');
    if (kind === undefined || id === '' || (value.startsWith('=') && !isSet)) return [];
    return [columnOf(valueField(path, label || id, kind, false), system, from)];
  });
  return [NAME, ...columns];
}
