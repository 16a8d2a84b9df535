import { fieldProblem } from '../../problems/request-problem.ts';

/**
 * The row number and id of a cursor of a list in the order of a file.
 * @throws RequestProblem input-invalid where the first key is no row number
 */
export function readRowPlace(
  keys: readonly string[] | undefined,
): { rowNumber: number; id: string } | undefined {
  if (keys === undefined) return undefined;
  const [row = '', id = ''] = keys;
  if (!/^\d{1,9}$/.test(row))
    throw fieldProblem('query.cursor', 'is no cursor of this list', 'Send the `next` of the page before.');
  return { rowNumber: Number(row), id };
}
