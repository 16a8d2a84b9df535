import { type createDeliveryNote, deliveryDocumentSchema } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { type DeliveryDocument, deliveryPaper } from '@scantling/quoting';
import type { z } from 'zod';
import type { DeliveryNote, Prisma } from '../../generated/prisma/client.ts';
import { nextNumber } from '../../numbers/next-number.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { lockQuote, readBilledQuote, toDate } from '../invoices/billing-records.ts';
import { billedClient } from '../invoices/invoice-document.ts';
import { keepPaper, type PaperMaker } from '../invoices/keep-invoice.ts';
import { asJson } from '../quotes/check-draft.ts';
import { documentWorkshop } from '../quotes/client-facts.ts';
import { type OutstandingLine, outstandingLines, readDeliveries } from './delivery-records.ts';

type Given = z.output<(typeof createDeliveryNote)['body']>;

/** @throws RequestProblem input-invalid naming the line that was not ordered, or not so many */
function handedOver(
  given: Given['lines'],
  outstanding: readonly OutstandingLine[],
): DeliveryDocument['lines'] {
  const seen = new Set<string>();
  return given.map(({ revisionId, lineId, quantity }, at) => {
    const key = `${revisionId} ${lineId}`;
    const line = outstanding.find((one) => one.revisionId === revisionId && one.lineId === lineId);
    if (line === undefined || seen.has(key))
      throw fieldProblem(
        `lines.${at}.lineId`,
        line === undefined ? 'was not ordered' : 'is named twice',
        'Name lines of the accepted quote and its additions, each once.',
      );
    seen.add(key);
    const rest = decimal(line.outstanding).minus(quantity);
    if (decimal(quantity).lte(0) || rest.lt(0))
      throw fieldProblem(
        `lines.${at}.quantity`,
        `is ${quantity}, and ${line.outstanding} of ${line.ordered} are still to be handed over`,
        'Enter more than 0 and no more than that.',
      );
    const { description, unit, ordered } = line;
    return { revisionId, lineId, description, quantity, unit, ordered, outstanding: rest.toString() };
  });
}

/** Writes a delivery note in the caller's transaction; others who deliver for the quote wait. */
export async function writeDeliveryNote(
  transaction: Prisma.TransactionClient,
  maker: PaperMaker,
  { quoteId, body, createdBy }: { quoteId: string; body: Given; createdBy: string },
): Promise<DeliveryNote> {
  await lockQuote(transaction, quoteId);
  const { quote, parts, currency } = await readBilledQuote(transaction, quoteId);
  const before = await readDeliveries(transaction, quoteId);
  const documents = before.map((row) => deliveryDocumentSchema.parse(row.document));
  const lines = handedOver(body.lines, outstandingLines(parts, documents));
  const workshop = documentWorkshop(await readWorkshop(transaction));
  const { isDemo, title } = quote;
  const { deliveredOn, orderNumber, note } = body;
  const year = Number(deliveredOn.slice(0, 4));
  const { number } = await nextNumber(transaction, { series: 'delivery-note', year, isDemo });
  const document: DeliveryDocument = {
    number,
    deliveredOn,
    workshop,
    client: billedClient(quote),
    quoteNumber: quote.number ?? '',
    orderNumber,
    title,
    note,
    currency,
    lines,
  };
  const paperId = await keepPaper(transaction, maker, { paper: deliveryPaper(document), isDemo });
  return transaction.deliveryNote.create({
    data: {
      quoteId,
      number,
      deliveredOn: toDate(deliveredOn),
      document: asJson(document),
      paperId,
      createdBy,
      isDemo,
    },
  });
}
