import { issueWords, parametersSchema, variantsSchema } from '@scantling/contracts';
import {
  isFormula,
  MOST_PARAMETERS,
  MOST_VARIANTS,
  type Parameter,
  type ParameterKind,
  type Variant,
} from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import type { LengthSystem } from '@scantling/units';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import type { FieldMessage } from '../../../components/field.tsx';
import { sentence } from '../../../lib/sentence.ts';
import type { BillField } from './bill-fields.ts';
import { kindOf, parameterFields, valueField, variantPath } from './parameter-fields.ts';
import { readValue, Unreadable } from './read-row.ts';

/** What was read of a row; where something is wrong, what others need to know of it all the same. */
interface RowReading<Value> {
  readonly value: Value;
  readonly errors: ReadonlyMap<string, FieldMessage>;
}

type Wrong = Map<string, FieldMessage>;

const missing = (label: string): FieldMessage => ({ message: `${label} is missing.`, mend: 'Fill it in.' });

function readCell(field: BillField, text: string, system: LengthSystem, wrong: Wrong): unknown {
  const typed = text.trim();
  if (typed === '') {
    if (field.isRequired) wrong.set(field.path, missing(field.label));
    return undefined;
  }
  try {
    return readValue(field, typed, system);
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    wrong.set(field.path, { message: error.message, mend: error.mend });
    return undefined;
  }
}

/** A value that is no formula, as decimal text or code. */
function readPlain(field: BillField, text: string, system: LengthSystem, wrong: Wrong): string | undefined {
  const value = readCell(field, text, system, wrong);
  if (!isFormula(value)) return value === undefined ? undefined : String(value);
  wrong.set(field.path, {
    message: 'A formula stands where a value is wanted.',
    mend: 'Write the value itself, without "=".',
  });
  return undefined;
}

function tooMany(at: number, most: number, what: string, path: string, wrong: Wrong): void {
  if (at < most) return;
  wrong.set(path, {
    message: `A design has at most ${most} ${what}.`,
    mend: 'Remove some, or make it two designs.',
  });
}

function misplaced(kind: ParameterKind, path: string): FieldMessage {
  return path === 'choices'
    ? { message: `A ${kind} is not chosen from materials.`, mend: 'Clear it, or set least and greatest.' }
    : { message: 'A material has no least and no greatest.', mend: 'Clear it, or list choices.' };
}

/** A value beyond the bounds of its parameter, in the way both are written there. */
function beyondBounds(
  value: string,
  typed: string,
  { cells }: GridRow,
  kind: ParameterKind,
  system: LengthSystem,
): FieldMessage | undefined {
  for (const path of ['least', 'greatest'] as const) {
    const text = (cells[path] ?? '').trim();
    const bound = readPlain(valueField(path, path, kind, false), text, system, new Map());
    if (kind === 'material' || bound === undefined) continue;
    const isLeast = path === 'least';
    const [less, more] = isLeast ? [value, bound] : [bound, value];
    if (decimal(less).lt(more))
      return {
        message: `${typed.trim()} is ${isLeast ? 'less' : 'more'} than the ${path}, ${text}.`,
        mend: `Write at ${isLeast ? 'least' : 'most'} ${text}, or change the ${path} of the parameter.`,
      };
  }
  return undefined;
}

/** A parameter as typed. One that cannot be read still has its id, so that formulas over it are not told as well. */
export function readParameter(row: GridRow, at: number, system: LengthSystem): RowReading<Parameter> {
  const wrong: Wrong = new Map();
  const { cells } = row;
  const kind = kindOf(row);
  if (kind === undefined)
    wrong.set('kind', {
      message: `"${cells.kind ?? ''}" is no kind of parameter.`,
      mend: 'Choose length, count, number or material.',
    });
  const values: Record<string, unknown> = {};
  for (const field of parameterFields(kind ?? 'length')) {
    const text = cells[field.path] ?? '';
    const isMisplaced =
      kind === 'material' ? field.path === 'least' || field.path === 'greatest' : field.path === 'choices';
    if (field.path === 'kind' || (kind === undefined && field.path !== 'label' && field.path !== 'id'))
      continue;
    if (isMisplaced) {
      if (kind !== undefined && text.trim() !== '') wrong.set(field.path, misplaced(kind, field.path));
      continue;
    }
    const isBound = field.path === 'least' || field.path === 'greatest';
    const value = (isBound ? readPlain : readCell)(field, text, system, wrong);
    if (value !== undefined)
      values[field.path] = isFormula(value) || Array.isArray(value) ? value : String(value);
  }
  if (kind !== undefined && typeof values.value === 'string') {
    const beyond = beyondBounds(values.value, cells.value ?? '', row, kind, system);
    if (beyond) wrong.set('value', beyond);
  }
  tooMany(at, MOST_PARAMETERS, 'parameters', 'label', wrong);
  const read = parametersSchema.safeParse([{ ...values, kind }]);
  if (read.success && read.data[0]) return { value: read.data[0], errors: wrong };
  for (const issue of read.error?.issues ?? []) {
    const path = String(issue.path[1] ?? 'label');
    const field = parameterFields('length').find((one) => one.path === path);
    const { message, mend } = issueWords(issue, false);
    // What a value may be is not known before the kind is.
    if (kind !== undefined && !wrong.has(path))
      wrong.set(path, { message: sentence(field?.label ?? 'It', message), mend });
  }
  const id = (cells.id ?? '').trim();
  return { value: { id, label: id, kind: kind ?? 'length', value: '' }, errors: wrong };
}

/** A variant as typed; values that cannot be read are left out. */
export function readVariant(
  row: GridRow,
  at: number,
  parameters: readonly GridRow[],
  system: LengthSystem,
): RowReading<Variant> {
  const wrong: Wrong = new Map();
  const { cells } = row;
  const name = (cells.name ?? '').trim();
  if (name === '') wrong.set('name', missing('Name'));
  tooMany(at, MOST_VARIANTS, 'variants', 'name', wrong);
  const values: Record<string, string> = {};
  for (const parameter of parameters) {
    const path = variantPath(parameter);
    const kind = kindOf(parameter);
    const { id = '', label = '' } = parameter.cells;
    if (kind === undefined || id === '') continue;
    const value = readPlain(valueField(path, label, kind, false), cells[path] ?? '', system, wrong);
    if (value === undefined) continue;
    values[id] = value;
    const beyond = beyondBounds(value, cells[path] ?? '', parameter, kind, system);
    if (beyond) wrong.set(path, beyond);
  }
  const variant = { id: cells.id ?? '', name, values };
  const read = variantsSchema.safeParse([variant]);
  if (read.success && read.data[0]) return { value: read.data[0], errors: wrong };
  for (const issue of read.error?.issues ?? []) {
    const [, field, id] = issue.path.map(String);
    const of = field === 'values' ? parameters.find(({ cells: { id: own } }) => own === id) : undefined;
    const path = of ? variantPath(of) : 'name';
    const { message, mend } = issueWords(issue, false);
    if (!wrong.has(path)) wrong.set(path, { message: sentence(of?.cells.label ?? 'Name', message), mend });
  }
  return { value: variant, errors: wrong };
}
