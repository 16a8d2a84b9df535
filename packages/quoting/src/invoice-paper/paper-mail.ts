import type { DeliveryDocument, InvoiceDocument, ReceiptDocument } from '../invoice/index.ts';
import type { DocumentWorkshop } from '../quote/client-document.ts';
import { billingWriters } from './billing-paper.ts';
import { INVOICE_HEADINGS } from './invoice-paper.ts';

/** What a mail with a paper attached says, to be changed before it goes. */
export interface PaperMail {
  readonly subject: string;
  readonly text: string;
}

const LONGEST_SUBJECT = 200;

function mail(
  subject: string,
  { client, workshop }: { client: { name: string }; workshop: DocumentWorkshop },
  said: readonly string[],
): PaperMail {
  const signed = [workshop.name, workshop.email ?? '', workshop.phone].filter((line) => line !== '');
  return {
    subject: subject.slice(0, LONGEST_SUBJECT),
    text: [`${client.name},`, '', ...said, '', ...signed].join('\n'),
  };
}

/** `isOpen`: something is still owed on it. */
export function invoiceMail(document: InvoiceDocument, isOpen: boolean): PaperMail {
  const { kind, number, title, credits, dueOn } = document;
  const heading = INVOICE_HEADINGS[kind];
  const pay = isOpen ? `Please pay it by ${dueOn}.` : 'Nothing is owed on it any more.';
  return mail(`${heading} ${number}: ${title}`, document, [
    `attached is our ${heading.toLowerCase()} ${number} for ${title}.`,
    credits === null ? pay : `It takes back from invoice ${credits.number}.`,
  ]);
}

export function receiptMail(receipt: Omit<ReceiptDocument, 'owedAfter' | 'method' | 'reference'>): PaperMail {
  const { number, title, amount, receivedOn, invoiceNumber } = receipt;
  const { money } = billingWriters(receipt);
  return mail(`Receipt ${number}: ${title}`, receipt, [
    `attached is our receipt ${number} for ${money(amount)}, received on ${receivedOn} for invoice ${invoiceNumber}.`,
    'Thank you.',
  ]);
}

export function deliveryMail(document: DeliveryDocument): PaperMail {
  const { number, title, deliveredOn } = document;
  return mail(`Delivery note ${number}: ${title}`, document, [
    `attached is our delivery note ${number} for ${title}, handed over on ${deliveredOn}.`,
  ]);
}
