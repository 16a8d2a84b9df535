import { billSchema, issueWords } from '@scantling/contracts';
import { type DrawnBill, EMPTY_BILL } from '@scantling/costing';
import { type LengthSystem, parseLength, UnreadableLengthError } from '@scantling/units';
import type { FieldError } from '../../../lib/api-problem.ts';
import { fromPercent, plainDecimal } from '../../../lib/percent.ts';
import { sentence } from '../../../lib/sentence.ts';
import { BILL_FIELDS, type BillField, type BillKind } from './bill-fields.ts';
import type { RowCells } from './bill-text.ts';

export type ReadRow =
  /** A bill with just this row in it. */
  | { readonly bill: DrawnBill; readonly errors: readonly [] }
  | { readonly bill: null; readonly errors: readonly FieldError[] };

/** What was typed cannot be what the field holds. */
export class Unreadable extends Error {
  constructor(
    message: string,
    readonly mend: string,
  ) {
    super(message);
  }
}

/** Forms of number that a formula may stand for, marked by a "=". */
const FORMULA_FORMS: readonly BillField['form'][] = ['count', 'number', 'length'];

/**
 * The value a text stands for in a field.
 * @throws Unreadable
 */
export function readValue(field: BillField, typed: string, system: LengthSystem): unknown {
  if (typed.startsWith('=') && FORMULA_FORMS.includes(field.form) && field.choices === undefined)
    return { formula: typed.slice(1).trim() };
  switch (field.form) {
    case 'count':
      if (!/^\d{1,6}$/.test(typed))
        throw new Unreadable(`"${typed}" is no whole number.`, 'Write digits only, such as 4.');
      return Number(typed);
    case 'number':
      return decimalOf(typed);
    case 'percent':
      return fromPercent(decimalOf(typed));
    case 'ids':
      return typed.split(/\s+/);
    case 'yes-no':
      return true;
    case 'length':
      try {
        return parseLength(typed, system === 'metric' ? 'mm' : 'in').toFixed();
      } catch (error) {
        if (!(error instanceof UnreadableLengthError)) throw error;
        throw new Unreadable(
          `"${typed}" is no length: ${error.reason}.`,
          'Write it like 600, 60 cm, 23 5/8" or 1\' 11 5/8".',
        );
      }
    default:
      return typed;
  }
}

/** @throws Unreadable */
function decimalOf(typed: string): string {
  const text = plainDecimal(typed);
  if (!/^-?\d+(\.\d+)?$/.test(text))
    throw new Unreadable(`"${typed}" is no number.`, 'Write digits with a point, such as 12.5.');
  return text;
}

type Nested = { [name: string]: unknown };

function put(row: Nested, path: string, value: unknown): void {
  const [outer = path, inner] = path.split('.');
  if (inner === undefined) row[outer] = value;
  else row[outer] = { ...(row[outer] ?? {}), [inner]: value };
}

/** Reads one row as typed, by the rules the API has for it. Errors name the value by its path in the row. */
export function readRow(kind: BillKind, draft: RowCells, system: LengthSystem): ReadRow {
  const fields = BILL_FIELDS[kind];
  const errors: FieldError[] = [];
  const row: Nested = {};
  for (const field of fields) {
    const typed = (draft[field.path] ?? '').trim();
    if (typed === '') {
      if (field.isRequired)
        errors.push({ field: field.path, message: `${field.label} is missing.`, mend: 'Fill it in.' });
      // An empty list of parts says "all"; every other empty value is left out.
      else if (field.form === 'ids') row[field.path] = [];
      continue;
    }
    try {
      put(row, field.path, readValue(field, typed, system));
    } catch (error) {
      if (!(error instanceof Unreadable)) throw error;
      errors.push({ field: field.path, message: error.message, mend: error.mend });
    }
  }
  if (errors.length > 0) return { bill: null, errors };
  const read = billSchema.safeParse({ ...EMPTY_BILL, [kind]: [row] });
  if (read.success) return { bill: read.data, errors: [] };
  return {
    bill: null,
    errors: read.error.issues.map((issue) => {
      const inner = issue.path.slice(2).map(String);
      const field = fields.find(({ path }) => path === inner.join('.') || path === inner[0]);
      const isMissing = issue.code === 'invalid_type' || issue.code === 'invalid_union';
      const { message, mend } = issueWords(issue, isMissing);
      return {
        field: field?.path ?? inner.join('.'),
        message: sentence(field?.label ?? 'It', isMissing ? 'is missing' : message),
        mend: isMissing ? 'Fill it in.' : mend,
      };
    }),
  };
}
