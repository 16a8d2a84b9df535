import type { Prisma } from '../../generated/prisma/client.ts';
import { queueMail } from '../../outbox/queue-mail.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { documentWorkshop } from '../quotes/client-facts.ts';
import type { RevisionRow } from '../quotes/quote-rows.ts';

/** Tells the workshop that its offer was accepted, where its letterhead has an address. */
export async function mailAcceptance(
  transaction: Prisma.TransactionClient,
  row: RevisionRow,
  name: string,
): Promise<void> {
  const workshop = documentWorkshop(await readWorkshop(transaction));
  if (workshop.email === null) return;
  await queueMail(transaction, {
    event: `quote-accepted:${row.id}`,
    to: { name: workshop.name, address: workshop.email },
    subject: `Accepted: ${row.number} ${row.quote.title}`.slice(0, 200),
    text: `${name} has accepted ${row.number}, ${row.quote.title}, for ${row.quote.client.name}.\n`,
    about: { kind: 'quote', id: row.quoteId },
    isDemo: row.quote.isDemo,
  });
}
