import type { Prisma } from '../../generated/prisma/client.ts';

type Access = Prisma.TransactionClient;

/** What was asked for has been quoted; an enquiry that is decided already stays so. */
export async function markQuoted(transaction: Access, enquiryId: string | null): Promise<void> {
  if (enquiryId === null) return;
  await transaction.enquiry.updateMany({
    where: { id: enquiryId, outcome: { in: ['open', 'answered'] } },
    data: { outcome: 'quoted', version: { increment: 1 } },
  });
}

/** The client said yes on that day. */
export async function markWon(transaction: Access, enquiryId: string | null, onDay: string): Promise<void> {
  if (enquiryId === null) return;
  await transaction.enquiry.updateMany({
    where: { id: enquiryId, outcome: { not: 'won' } },
    data: { outcome: 'won', outcomeOn: new Date(`${onDay}T00:00:00Z`), version: { increment: 1 } },
  });
}
