import { getReadiness } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { RequestProblem } from '../../problems/request-problem.ts';

export const answerGetReadiness = handle(getReadiness, async ({ services }) => {
  try {
    await services.database.$queryRaw`select 1`;
  } catch (cause) {
    throw new RequestProblem('not-ready', { cause });
  }
  return { status: 'ready' as const };
});
