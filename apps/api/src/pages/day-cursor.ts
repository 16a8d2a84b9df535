import { fieldProblem } from '../problems/request-problem.ts';

/**
 * The day and id of a cursor of a list that is sorted by day and then by id.
 * @throws RequestProblem input-invalid where the first key is no day
 */
export function readDayAndId(keys: readonly string[] | undefined): { day: Date; id: string } | undefined {
  if (keys === undefined) return undefined;
  const [day = '', id = ''] = keys;
  const read = /^\d{4}-\d{2}-\d{2}$/.test(day) ? new Date(day) : new Date(Number.NaN);
  if (Number.isNaN(read.getTime()))
    throw fieldProblem('query.cursor', 'is no cursor of this list', 'Send the `next` of the page before.');
  return { day: read, id };
}
