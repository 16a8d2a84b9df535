import {
  type ChangeReach,
  type FieldProblem,
  type LeafHome,
  leafHome,
  type sheetChangesBody,
} from '@scantling/contracts';
import { leafValueProblem } from '@scantling/costing';
import type { FigureNode, FigureTable } from '@scantling/figures';
import type { z } from 'zod';
import { RequestProblem } from '../../problems/request-problem.ts';
import { leafByKey } from '../scenarios/try-on-sheet.ts';

/** One value to take over, with its leaf and where that is kept. */
export interface AskedChange {
  readonly leaf: FigureNode;
  readonly home: LeafHome;
  readonly value: string;
  readonly reach: ChangeReach;
  /** The field of the request with the value, and the one with its reach. */
  readonly field: string;
  readonly reachField: string;
}

/**
 * The changes as they concern a worked-out sheet.
 * @throws RequestProblem input-invalid with every one that cannot be done
 */
export function askedChanges(
  figures: FigureTable,
  { changes }: z.output<typeof sheetChangesBody>,
): AskedChange[] {
  const errors: FieldProblem[] = [];
  const asked = changes.flatMap(({ leaf: key, value, reach }, at): AskedChange[] => {
    const leaf = leafByKey(figures, key);
    if (leaf?.source === undefined) {
      errors.push({
        field: `changes.${at}.leaf`,
        message: `names "${key}", which this sheet does not rest on`,
        mend: 'Leave it out, or read the sheet again.',
      });
      return [];
    }
    const problem = leafValueProblem({ ...leaf, source: leaf.source }, value);
    if (problem !== null) errors.push({ field: `changes.${at}.value`, ...problem });
    const home = leafHome(leaf.id);
    if (reach === 'everywhere' && home.kind === 'nowhere')
      errors.push({ field: `changes.${at}.reach`, message: home.why, mend: home.mend });
    return [{ leaf, home, value, reach, field: `changes.${at}.value`, reachField: `changes.${at}.reach` }];
  });
  if (errors.length > 0) throw new RequestProblem('input-invalid', { errors });
  return asked;
}
