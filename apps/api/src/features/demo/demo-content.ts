import type { DemoContent } from '@scantling/contracts';
import type { Prisma } from '../../generated/prisma/client.ts';

const DEMO = { where: { isDemo: true } } as const;

/** How many records the demo has in the database now. */
export async function countDemo(database: Prisma.TransactionClient): Promise<DemoContent> {
  const ofDemo = { supplier: { isDemo: true } };
  return {
    designs: await database.design.count(DEMO),
    quotes: await database.quote.count(DEMO),
    costSheets: await database.costSheet.count(DEMO),
    materials: await database.material.count(DEMO),
    suppliers: await database.supplier.count(DEMO),
    priceLists: await database.priceList.count({ where: ofDemo }),
    prices: await database.priceLine.count({ where: { list: ofDemo } }),
    exchangeRates: await database.exchangeRate.count(DEMO),
    tools: await database.tool.count(DEMO),
    people: await database.person.count(DEMO),
    clients: await database.client.count(DEMO),
    enquiries: await database.enquiry.count(DEMO),
    overheadAmounts: await database.overheadAmount.count(DEMO),
  };
}
