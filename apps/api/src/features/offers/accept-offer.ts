import { acceptanceSchema, acceptOffer } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import { acceptRevision } from '../quotes/answer-revision.ts';
import { lockRevision } from '../quotes/quote-records.ts';
import { dayOf, type RevisionRow } from '../quotes/quote-rows.ts';
import { mailAcceptance } from './mail-acceptance.ts';
import { findOffer, findOfferId, requireOpen } from './offer-records.ts';

type Given = { name: string; chosen: readonly string[] };

/** True where this very acceptance is kept already: a second press of the button. */
function isRepeated(row: RevisionRow, { name, chosen }: Given): boolean {
  if (row.acceptance === null) return false;
  const kept = acceptanceSchema.parse(row.acceptance);
  return kept.by.kind === 'link' && kept.name === name && kept.chosen.join() === [...chosen].sort().join();
}

export const answerAcceptOffer = handle(acceptOffer, async ({ params, body, request, services }) => {
  const id = await findOfferId(services, params.token, request.ip);
  return services.database.$transaction(async (transaction) => {
    const at = services.clock();
    const today = dayOf(at);
    const row = await lockRevision(transaction, id);
    if (!isRepeated(row, body)) {
      await requireOpen(transaction, row, today);
      if (body.documentHash !== row.documentHash)
        throw fieldProblem(
          'documentHash',
          'is not of the text behind this link',
          'Read the offer again and accept what you have read.',
        );
      const { name, chosen, remark } = body;
      await acceptRevision(transaction, row, {
        name,
        chosen,
        remark,
        by: { kind: 'link' },
        at,
        onDay: today,
      });
      await mailAcceptance(transaction, row, name);
    }
    return findOffer(transaction, id, today);
  });
});
