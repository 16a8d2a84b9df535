import { type NumberSeries, startsAnewEachYear, writeNumber } from '@scantling/contracts';
import type { Prisma } from '../generated/prisma/client.ts';
import { readWorkshop } from '../shop/workshop-record.ts';

/** A pattern without the year counts on for ever, under this one. */
const EVERY_YEAR = 0;

export type NumberWanted = {
  series: NumberSeries;
  /** The year of the paper's own date. */
  year: number;
  isDemo?: boolean;
};

/** Locks the counter's row for the rest of the transaction and moves it on. */
async function countOn(transaction: Prisma.TransactionClient, series: string, year: number): Promise<number> {
  const [row] = await transaction.$queryRaw<{ last: number }[]>`
    insert into "NumberCounter" as counter ("series", "year", "last") values (${series}, ${year}, 1)
    on conflict ("series", "year") do update set "last" = counter."last" + 1
    returning "last"`;
  if (row === undefined) throw new Error(`the counter of ${series} gave nothing`);
  return row.last;
}

/**
 * Gives out the next number of a series, by the workshop's pattern. It belongs to the transaction: rolled back, the
 * number is free again and the next one to ask gets it, so that numbers have no holes. Others who ask for a number of
 * the series wait until the transaction ends: ask late, and do nothing slow afterwards. A number given out under an
 * earlier pattern is passed over. The transaction reads committed rows (the default), no snapshot.
 * @throws RequestProblem not-found before the workshop is set up
 */
export async function nextNumber(
  transaction: Prisma.TransactionClient,
  { series, year, isDemo = false }: NumberWanted,
): Promise<{ number: string }> {
  const { settings } = await readWorkshop(transaction);
  const pattern = settings.quoting.numberPatterns[series];
  const counted = startsAnewEachYear(pattern) ? year : EVERY_YEAR;
  for (;;) {
    const count = await countOn(transaction, series, counted);
    const number = writeNumber(pattern, { year, count });
    const row = { series, number, year: counted, count, isDemo };
    const { count: isFree } = await transaction.issuedNumber.createMany({ data: row, skipDuplicates: true });
    if (isFree > 0) return { number };
  }
}

/**
 * Forgets the demo's numbers; a series of which nothing else was given out begins at 1 again.
 * @param kept numbers of demo papers that stay, which become the workshop's own
 */
export async function forgetDemoNumbers(
  transaction: Prisma.TransactionClient,
  kept: readonly string[] = [],
): Promise<void> {
  await transaction.issuedNumber.updateMany({
    where: { isDemo: true, number: { in: [...kept] } },
    data: { isDemo: false },
  });
  await transaction.issuedNumber.deleteMany({ where: { isDemo: true } });
  await transaction.$executeRaw`
    delete from "NumberCounter" counter where not exists
    (select 1 from "IssuedNumber" issued where issued."series" = counter."series" and issued."year" = counter."year")`;
}
