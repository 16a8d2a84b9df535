import type { Prisma } from '../../generated/prisma/client.ts';
import { queueMail } from '../../outbox/queue-mail.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { documentWorkshop } from '../quotes/client-facts.ts';
import { type RevisionRow, titleOf } from '../quotes/quote-rows.ts';

/** Tells the workshop that its offer was accepted, where its letterhead has an address. */
export async function mailAcceptance(
  transaction: Prisma.TransactionClient,
  row: RevisionRow,
  name: string,
): Promise<void> {
  const workshop = documentWorkshop(await readWorkshop(transaction));
  if (workshop.email === null) return;
  const title = titleOf(row, row.quote);
  await queueMail(transaction, {
    event: `quote-accepted:${row.id}`,
    to: { name: workshop.name, address: workshop.email },
    subject: `Accepted: ${row.number} ${title}`.slice(0, 200),
    text: `${name} has accepted ${row.number}, ${title}, for ${row.quote.client.name}.\n`,
    about: { kind: 'quote', id: row.quoteId },
    isDemo: row.quote.isDemo,
  });
}
