import { decidePriceImpact } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { dayOf } from '../quotes/quote-rows.ts';
import { addRevision } from '../quotes/write-draft.ts';
import { decidersOf, type ImpactRow, toImpactRow, WHOLE_ROW } from './impact-records.ts';

/** @throws RequestProblem input-invalid where the row takes no such decision */
function requireFitting(row: ImpactRow, decision: string, reason: string): void {
  const isSent = row.revision?.state === 'sent';
  if ((decision === 'revise' || decision === 'hold') && !isSent)
    throw fieldProblem(
      'decision',
      'is for a quote that was sent and not answered',
      'Accept it: a draft and a cost sheet follow the prices by themselves.',
    );
  if (decision === 'hold' && reason === '')
    throw fieldProblem('reason', 'is missing', 'Say in a few words why the price quoted stands.');
}

export const answerDecidePriceImpact = handle(decidePriceImpact, ({ params, body, actor, services }) =>
  services.database.$transaction(async (transaction) => {
    const { decision, reason } = body;
    const now = services.clock();
    const decidedBy = actorKey(actor);
    await transaction.$queryRaw`select id from "PriceImpactRow" where id = ${params.id} for update`;
    const where = { id: params.id };
    const row = await transaction.priceImpactRow.findUnique({ where, include: WHOLE_ROW });
    if (row === null) throw notFound('price impact of a quote');
    requireFitting(row, decision, reason);
    const today = dayOf(now);
    const draftId =
      decision === 'revise' && row.revisionId !== null
        ? await addRevision(transaction, { id: row.revisionId, today }, { createdBy: decidedBy })
        : null;
    const data = { rowId: row.id, decision, reason, decidedBy, decidedAt: now };
    await transaction.priceImpactDecision.create({ data });
    const changed = await transaction.priceImpactRow.update({
      where,
      data: { isDecided: decision !== 'reopen' },
      include: WHOLE_ROW,
    });
    return { row: toImpactRow(changed, await decidersOf(transaction, [changed])), draftId };
  }),
);
