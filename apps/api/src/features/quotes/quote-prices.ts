import type { Prisma } from '../../generated/prisma/client.ts';
import type { FrozenWorking } from './frozen-working.ts';

/** Keeps which lines of price lists a quote rests on as it is sent, so that a later list finds it by them. */
export async function keepPrices(
  transaction: Prisma.TransactionClient,
  revisionId: string,
  { sheets }: Pick<FrozenWorking, 'sheets'>,
): Promise<void> {
  const ids = Object.values(sheets).flatMap(({ worked }) =>
    worked.columns.flatMap(({ materials }) => materials.map(({ priceLineId }) => priceLineId)),
  );
  const lines = await transaction.priceLine.findMany({
    where: { id: { in: [...new Set(ids)] } },
    select: { id: true },
  });
  await transaction.quotePrice.createMany({
    data: lines.map(({ id: lineId }) => ({ revisionId, lineId })),
    skipDuplicates: true,
  });
}
