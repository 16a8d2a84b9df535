import type { ClientDocument } from '@scantling/quoting';
import type { Config } from '../../config.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { queueMail } from '../../outbox/queue-mail.ts';
import type { RevisionRow } from './quote-rows.ts';

/** Where a client reads and answers an offer, below the program's address. */
export function offerPath(token: string): string {
  return `/offers/${token}`;
}

type Address = Pick<Config, 'publicUrl' | 'host' | 'port'>;

function offerAddress({ publicUrl, host, port }: Address, token: string): string {
  return `${publicUrl ?? `http://${host}:${port}`}${offerPath(token)}`;
}

function textOf(document: ClientDocument, address: string): string {
  const { kind, client, title, number, validUntil, workshop, addsTo } = document;
  const what =
    kind === 'quote'
      ? `here is our quote ${number}: ${title}.`
      : `here is the addition ${number} to your order ${addsTo?.number ?? ''}: ${title}.`;
  return [
    `${client.name},`,
    '',
    what,
    '',
    `You can read it, choose among its options, and accept or decline it here until ${validUntil}:`,
    address,
    '',
    'The same is attached as a PDF. The link is yours alone: whoever has it can answer for you.',
    '',
    workshop.name,
    ...[workshop.email ?? '', workshop.phone].filter((line) => line !== ''),
  ].join('\n');
}

/** Puts the mail with link and paper into the outbox. @returns the address, null where the client has none */
export async function mailOffer(
  transaction: Prisma.TransactionClient,
  { config }: { config: Address },
  sent: { row: RevisionRow; document: ClientDocument; token: string; paperId: string },
): Promise<string | null> {
  const { row, document, token, paperId } = sent;
  const { id: quoteId, client, isDemo } = row.quote;
  if (client.email === null) return null;
  const what = document.kind === 'quote' ? 'Quote' : 'Addition';
  await queueMail(transaction, {
    event: `quote-sent:${row.id}`,
    to: { name: client.name, address: client.email },
    subject: `${what} ${document.number}: ${document.title}`.slice(0, 200),
    text: textOf(document, offerAddress(config, token)),
    attachments: [paperId],
    about: { kind: 'quote', id: quoteId },
    isDemo,
  });
  return client.email;
}
