import {
  deliveryDocumentSchema,
  type deliveryNoteSchema,
  type outstandingLineSchema,
} from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { type AgreedPart, type DeliveryDocument, lineUnit, orderedLines } from '@scantling/quoting';
import type { z } from 'zod';
import type { DeliveryNote, Prisma } from '../../generated/prisma/client.ts';
import { dayOfColumn } from '../invoices/billing-records.ts';

export type OutstandingLine = z.output<typeof outstandingLineSchema>;

export function toDeliveryNote(row: DeliveryNote): z.output<typeof deliveryNoteSchema> {
  return {
    id: row.id,
    quoteId: row.quoteId,
    number: row.number,
    deliveredOn: dayOfColumn(row.deliveredOn),
    document: deliveryDocumentSchema.parse(row.document),
    paperId: row.paperId,
    isDemo: row.isDemo,
    createdAt: row.createdAt.toISOString(),
  };
}

export async function readDeliveries(
  database: Prisma.TransactionClient,
  quoteId: string,
): Promise<DeliveryNote[]> {
  return database.deliveryNote.findMany({ where: { quoteId }, orderBy: { id: 'desc' } });
}

/** What was ordered, line by line, and how much of it is handed over; delivery itself and deductions are no goods. */
export function outstandingLines(
  parts: readonly AgreedPart[],
  delivered: readonly DeliveryDocument[],
): OutstandingLine[] {
  const handedOver = delivered.flatMap(({ lines }) => lines);
  return parts.flatMap((part) =>
    orderedLines(part)
      .filter((line) => line.kind !== 'delivery' && decimal(line.amount).gte(0))
      .map((line) => {
        const own = handedOver.filter((one) => one.revisionId === part.id && one.lineId === line.id);
        const sum = own.reduce((all, one) => all.plus(one.quantity), decimal(0));
        return {
          revisionId: part.id,
          lineId: line.id,
          description: line.description,
          unit: lineUnit(line),
          ordered: line.quantity,
          delivered: sum.toString(),
          outstanding: decimal(line.quantity).minus(sum).toString(),
        };
      }),
  );
}
