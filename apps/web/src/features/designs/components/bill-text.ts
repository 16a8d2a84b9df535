import { isFormula } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import { lengthText } from '../../../lib/length-text.ts';
import { toPercent } from '../../../lib/percent.ts';
import type { BillField } from './bill-fields.ts';

/** What a row holds at a path, or undefined. */
export function valueAt(row: object, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (whole, name) => (typeof whole === 'object' && whole !== null ? Reflect.get(whole, name) : undefined),
      row,
    );
}

function textOf(row: object, field: BillField, system: LengthSystem): string {
  const value = valueAt(row, field.path);
  if (value === undefined || value === null || value === false) return '';
  if (value === true) return 'yes';
  if (Array.isArray(value)) return value.join(' ');
  if (isFormula(value)) return `= ${value.formula}`;
  const text = String(value);
  if (field.form === 'length') return lengthText(text, system);
  return field.form === 'percent' ? toPercent(text) : text;
}

/** What stands in the cells of a row, by path. */
export type RowCells = Readonly<Record<string, string>>;

export function rowCells(row: object, fields: readonly BillField[], system: LengthSystem): RowCells {
  return Object.fromEntries(fields.map((field) => [field.path, textOf(row, field, system)]));
}

/** The unit a bare number has in a field, or ''. */
export function unitOf(field: BillField, system: LengthSystem): string {
  if (field.form === 'length') return system === 'metric' ? 'mm' : '';
  return field.form === 'percent' ? '%' : (field.suffix ?? '');
}

/** Values in words: "Staves 3; Rejects 5 %". */
export function valuesText(cells: RowCells, fields: readonly BillField[], system: LengthSystem): string {
  return fields
    .flatMap((field) => {
      const text = cells[field.path] ?? '';
      if (text === '') return [];
      const unit = /^[\d.]+$/.test(text) ? unitOf(field, system) : '';
      return [field.form === 'yes-no' ? field.label : [field.label, text, unit].filter(Boolean).join(' ')];
    })
    .join('; ');
}

/** Values without a column of their own, in words. */
export function furtherText(cells: RowCells, fields: readonly BillField[], system: LengthSystem): string {
  return valuesText(
    cells,
    fields.filter((field) => !field.isColumn),
    system,
  );
}
