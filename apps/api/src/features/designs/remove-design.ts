import { removeDesign } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { requireUpdated } from '../../version-match.ts';

export const answerRemoveDesign = handle(
  removeDesign,
  async ({ params: { id }, services, expectedVersion }) => {
    await services.database.$transaction(async (transaction) => {
      const sheets = await transaction.costSheet.count({ where: { designId: id } });
      if (sheets > 0) {
        throw new RequestProblem('still-in-use', {
          detail: `${sheets} cost sheets rest on this design. Remove them first.`,
        });
      }
      const { count } = await transaction.design.deleteMany({ where: { id, version: expectedVersion() } });
      await requireUpdated(
        count,
        'design',
        async () => (await transaction.design.count({ where: { id } })) > 0,
      );
    });
    return undefined;
  },
);
