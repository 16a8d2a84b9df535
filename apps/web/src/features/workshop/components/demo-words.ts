import type { DemoContent } from '@scantling/contracts';
import type { RemovedDemo } from '../api/remove-demo.ts';

type Counted = keyof DemoContent | keyof RemovedDemo['kept'];

const WORDS: Readonly<Record<Counted, readonly [one: string, many: string]>> = {
  designs: ['design', 'designs'],
  quotes: ['quote', 'quotes'],
  costSheets: ['cost sheet', 'cost sheets'],
  materials: ['material', 'materials'],
  suppliers: ['supplier', 'suppliers'],
  priceLists: ['price list', 'price lists'],
  prices: ['price', 'prices'],
  exchangeRates: ['exchange rate', 'exchange rates'],
  tools: ['tool', 'tools'],
  people: ['person', 'people'],
  clients: ['client', 'clients'],
  enquiries: ['enquiry', 'enquiries'],
  overheadAmounts: ['yearly amount', 'yearly amounts'],
  grades: ['labour grade', 'labour grades'],
};

/** "12 designs, 1 tool"; kinds of which there are none are left out, "nothing" where that leaves none. */
export function countsInWords(counts: Readonly<Partial<Record<Counted, number>>>): string {
  const parts = Object.entries(WORDS).flatMap(([name, [one, many]]) => {
    const count = Object.entries(counts).find(([key]) => key === name)?.[1] ?? 0;
    return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  });
  return parts.length === 0 ? 'nothing' : parts.join(', ');
}
