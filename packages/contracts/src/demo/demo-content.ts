import { z } from 'zod';

const count = z.number().int().min(0);

/** How many records of each kind the demo has in the database. */
export const demoContentSchema = z
  .strictObject({
    designs: count,
    costSheets: count,
    quotes: count,
    materials: count,
    suppliers: count,
    priceLists: count,
    prices: count,
    exchangeRates: count,
    tools: count,
    people: count,
    clients: count,
    enquiries: count,
    overheadAmounts: count,
  })
  .meta({ id: 'DemoContent' });
export type DemoContent = z.output<typeof demoContentSchema>;

export const exampleDemoContent: DemoContent = {
  designs: 12,
  costSheets: 8,
  quotes: 8,
  materials: 109,
  suppliers: 3,
  priceLists: 9,
  prices: 693,
  exchangeRates: 24,
  tools: 25,
  people: 3,
  clients: 10,
  enquiries: 15,
  overheadAmounts: 18,
};
