import { exchangeRateSchema } from '@scantling/contracts';
import type { z } from 'zod';
import type { ExchangeRate } from '../../generated/prisma/client.ts';

export function toExchangeRate(row: ExchangeRate): z.output<typeof exchangeRateSchema> {
  const currency = exchangeRateSchema.shape.from;
  return {
    id: row.id,
    onDate: row.onDate.toISOString().slice(0, 10),
    from: currency.parse(row.from),
    to: currency.parse(row.to),
    rate: row.rate.toFixed(),
    source: row.source,
    createdAt: row.createdAt.toISOString(),
  };
}
