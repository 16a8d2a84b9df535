import type { PriceOffer } from '@scantling/costing';
import { type Currency, isCurrency, NoExchangeRateError, rateOn } from '@scantling/money';
import type { DatabaseAccess } from './database-access.ts';

type Exchange = NonNullable<PriceOffer['exchange']>;

interface RateRow {
  date: string;
  from: string;
  to: string;
  rate: string;
  source: string;
}

function readRates(database: DatabaseAccess, to: Currency, onDate: string): Promise<RateRow[]> {
  // Of two rows of one day the newer corrects the older; the older stays as history.
  return database.$queryRaw<RateRow[]>`
    select distinct on ("onDate", "from", "to") to_char("onDate", 'YYYY-MM-DD') as date, "from", "to",
      trim_scale(rate)::text as rate, source
    from "ExchangeRate" where ("to" = ${to} or "from" = ${to}) and "onDate" <= ${onDate}::date
    order by "onDate" desc, "from", "to", "createdAt" desc, id desc`;
}

/**
 * Exchanges into one currency by the newest rate dated on or before the day, entered either way round.
 * @returns a function from the currency exchanged to the rate, null where no rate is known
 */
export async function exchangesInto(
  database: DatabaseAccess,
  to: Currency,
  onDate: string,
): Promise<(from: Currency) => Exchange | null> {
  const rows = await readRates(database, to, onDate);
  const rates = rows.flatMap((row) =>
    isCurrency(row.from) && isCurrency(row.to) ? [{ ...row, from: row.from, to: row.to }] : [],
  );
  return (from) => {
    try {
      const found = rateOn(rates, from, to, onDate);
      const first = found.isInverse ? to : from;
      const entry = rates.find(
        ({ date, from: one, to: other }) =>
          date === found.date && one === first && other === (found.isInverse ? from : to),
      );
      if (entry === undefined) return null;
      const words = `1 ${entry.from} = ${entry.rate} ${entry.to} of ${entry.date}, ${entry.source}`;
      return { to, rate: found.rate.toString(), onDate: entry.date, source: words };
    } catch (error) {
      if (error instanceof NoExchangeRateError) return null;
      throw error;
    }
  };
}
