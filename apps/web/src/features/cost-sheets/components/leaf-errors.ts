import type { FigureNode } from '@scantling/figures';
import { ApiProblem, type FieldError } from '../../../lib/api-problem.ts';

/** The errors of an answer with each value named as its input is, instead of by its place in the request. */
export function leafErrors(
  error: unknown,
  leaves: readonly Pick<FigureNode, 'label'>[],
): readonly FieldError[] {
  if (!(error instanceof ApiProblem)) return [];
  return error.errors.map((one) => {
    const at = /^changes\.(\d+)\./.exec(one.field)?.[1];
    const leaf = at === undefined ? undefined : leaves[Number(at)];
    return leaf === undefined ? one : { ...one, field: leaf.label };
  });
}
