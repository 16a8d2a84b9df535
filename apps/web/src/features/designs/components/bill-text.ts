import { APPROXIMATION_MARK, formatLength, type LengthSystem } from '@scantling/units';
import { toPercent } from '../../../lib/percent.ts';
import type { BillField, BillRow } from './bill-fields.ts';

/** What a row holds at a path, or undefined. */
export function valueAt(row: BillRow, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (whole, name) => (typeof whole === 'object' && whole !== null ? Reflect.get(whole, name) : undefined),
      row,
    );
}

/** A length as it is typed back: exact, where no fraction is, in millimetres. */
export function typedLength(mm: string, system: LengthSystem): string {
  const written = formatLength(mm, system, { denominator: 64, places: 6 });
  return written.startsWith(APPROXIMATION_MARK) ? `${mm} mm` : written;
}

function textOf(row: BillRow, field: BillField, length: (mm: string) => string): string {
  const value = valueAt(row, field.path);
  if (value === undefined || value === null || value === false) return '';
  if (value === true) return 'yes';
  if (Array.isArray(value)) return value.join(' ');
  const text = String(value);
  if (field.form === 'length') return length(text);
  return field.form === 'percent' ? toPercent(text) : text;
}

/** A value as it is read in the table, with its unit. */
export function shownText(row: BillRow, field: BillField, system: LengthSystem): string {
  const text = textOf(row, field, (mm) => formatLength(mm, system));
  if (text === '') return '';
  const unit = field.form === 'percent' ? '%' : field.suffix;
  return unit === undefined ? text : `${text} ${unit}`;
}

/** Values without a column of their own, in words: "Staves 3; Rejects 5 %". */
export function furtherText(row: BillRow, fields: readonly BillField[], system: LengthSystem): string {
  return fields
    .filter((field) => !field.isColumn)
    .flatMap((field) => {
      const text = shownText(row, field, system);
      if (text === '') return [];
      return [field.form === 'yes-no' ? field.label : `${field.label} ${text}`];
    })
    .join('; ');
}

/** What stands in the fields of a row's form, by path. */
export type RowDraft = Readonly<Record<string, string>>;

export function rowDraft(row: BillRow, fields: readonly BillField[], system: LengthSystem): RowDraft {
  return Object.fromEntries(
    fields.map((field) => [field.path, textOf(row, field, (mm) => typedLength(mm, system))]),
  );
}
