import { clientDocumentSchema, quoteDraftSchema } from '@scantling/contracts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { pictureNames } from './document-pictures.ts';

type Access = Prisma.TransactionClient;

/** Cost sheets that the workshop's own quotes name, so that they stay when the demo goes. */
export async function sheetsInQuotes(transaction: Access): Promise<string[]> {
  const rows = await transaction.quoteRevision.findMany({
    where: { quote: { isDemo: false } },
    select: { draft: true },
  });
  const lines = rows.flatMap(({ draft }) => quoteDraftSchema.parse(draft).lines);
  return [...new Set(lines.flatMap((line) => (line.kind === 'cost-sheet' ? [line.costSheetId] : [])))];
}

/** Pictures that quotes which stay show, drafts and sent ones. */
export async function picturesInQuotes(transaction: Access): Promise<string[]> {
  const rows = await transaction.quoteRevision.findMany({ select: { draft: true, document: true } });
  return rows.flatMap((row) => {
    const draft = quoteDraftSchema.parse(row.draft);
    const drafted = [...draft.pictures, ...draft.lines.flatMap((line) => line.pictures)];
    const sent = row.document === null ? [] : pictureNames(clientDocumentSchema.parse(row.document));
    return [...drafted.map(({ sha256 }) => sha256), ...sent];
  });
}

/** Removes the demo's quotes in the transaction that removes the demo, the one way there is for what was sent. */
export async function removeDemoQuotes(transaction: Access): Promise<void> {
  await transaction.$executeRaw`set local scantling.removing_demo = 'on'`;
  const ofDemo = { quote: { isDemo: true } };
  await transaction.reminder.deleteMany({ where: { invoice: ofDemo } });
  const payments = { invoice: ofDemo };
  await transaction.payment.deleteMany({ where: { ...payments, reversesId: { not: null } } });
  await transaction.payment.deleteMany({ where: payments });
  await transaction.invoice.deleteMany({ where: { ...ofDemo, creditsId: { not: null } } });
  await transaction.invoice.deleteMany({ where: ofDemo });
  await transaction.deliveryNote.deleteMany({ where: ofDemo });
  await transaction.quoteRevision.deleteMany({ where: { quote: { isDemo: true } } });
  await transaction.quote.deleteMany({ where: { isDemo: true } });
  await transaction.$executeRaw`set local scantling.removing_demo = 'off'`;
}
