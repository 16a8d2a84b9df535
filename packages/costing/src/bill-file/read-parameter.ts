import { PARAMETER_KINDS, type Parameter, type Variant } from '../design-parameters/index.ts';
import type { BillColumn } from './bill-columns.ts';
import type { RowCells } from './row-cells.ts';

/** A row of kind `variant`, whose values wait for the parameters. */
export interface VariantRow {
  readonly id: string;
  readonly name: string;
  readonly row: RowCells;
}

/** A parameter of the design: lengths as lengths are written, materials by code. */
export function readParameter(row: RowCells): Parameter {
  const kind = row.oneOf('kind', PARAMETER_KINDS, 'length');
  const plain = (column: BillColumn) =>
    kind === 'length' ? row.plainLength(column) : row.plainNumber(column);
  const value =
    kind === 'material' ? row.text('value') : kind === 'length' ? row.length('value') : row.number('value');
  const [least, greatest] = kind === 'material' ? [] : [plain('least'), plain('greatest')];
  const choices = row.optional('choices')?.split(/\s+/);
  return {
    id: row.text('id'),
    label: row.text('name'),
    kind,
    value,
    ...(least === undefined ? {} : { least }),
    ...(greatest === undefined ? {} : { greatest }),
    ...(choices === undefined || kind !== 'material' ? {} : { choices }),
  };
}

/** The values of each variant: "length = 1350; wood = OAK-4". */
export function readVariants(rows: readonly VariantRow[], parameters: readonly Parameter[]): Variant[] {
  return rows.map(({ id, name, row }) => {
    const values: Record<string, string> = {};
    for (const given of row.optional('values')?.split(';') ?? []) {
      const [parameterId = '', text = ''] = given.split('=', 2).map((part) => part.trim());
      const kind = parameters.find((one) => one.id === parameterId)?.kind;
      if (kind === undefined || text === '')
        row.fail(
          'values',
          `holds "${given.trim()}", which sets no parameter of the file`,
          'write values such as length = 1350; wood = OAK-4',
        );
      else values[parameterId] = kind === 'length' ? row.lengthOf('values', text) : text;
    }
    return { id, name, values };
  });
}
