import { issueWords } from '@scantling/contracts';
import type { z } from 'zod';
import { RequestProblem } from '../../problems/request-problem.ts';

/** A value for one field of a record, with the place of the request that asks for it. */
export interface FieldValue {
  readonly path: readonly string[];
  readonly value: string;
  /** The field of the request, for errors. */
  readonly field: string;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

/** Counts of a bill that may be left out, so that nothing there tells that they are numbers. */
const COUNTS_LEFT_OUT: readonly string[] = ['spares', 'staves'];

function refused(field: string, message: string, mend: string): RequestProblem {
  return new RequestProblem('input-invalid', { errors: [{ field, message, mend }] });
}

function put(target: Record<string, unknown>, { path, value, field }: FieldValue): void {
  const [name = '', ...rest] = path;
  const inner = target[name];
  if (rest.length > 0) {
    if (!isRecord(inner))
      throw refused(field, 'is kept in a part of its record that is not there', 'Read the sheet again.');
    put(inner, { path: rest, value, field });
    return;
  }
  if (isRecord(inner) && typeof inner.formula === 'string')
    throw refused(
      field,
      `is worked out by the formula "${inner.formula}"`,
      'Change the formula or its parameter in the design, or enter it for this sheet only.',
    );
  const isCount = typeof inner === 'number' || COUNTS_LEFT_OUT.includes(name);
  target[name] = isCount ? Number(value) : value;
}

const NOT_TAKEN = {
  message: 'is not a value that its record takes',
  mend: 'Enter it with fewer digits, or for this sheet only.',
};

/**
 * A record with some of its fields set, checked by the schema its own form is checked by.
 * @throws RequestProblem input-invalid naming the value that the record does not take
 */
export function setInRecord<Schema extends z.ZodType>(
  schema: Schema,
  record: object,
  values: readonly FieldValue[],
): z.output<Schema> {
  const copy: Record<string, unknown> = JSON.parse(JSON.stringify(record));
  for (const value of values) put(copy, value);
  const read = schema.safeParse(copy);
  if (read.success) return read.data;
  const errors = read.error.issues.map((issue) => {
    const path = issue.path.map(String);
    const named = values.find((value) => value.path.every((step, at) => step === path[at]));
    const field = named?.field ?? path.join('.');
    return { field, ...(issue.code === 'invalid_union' ? NOT_TAKEN : issueWords(issue, false)) };
  });
  throw new RequestProblem('input-invalid', { errors });
}
