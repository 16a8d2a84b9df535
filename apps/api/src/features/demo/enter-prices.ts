import { createHash } from 'node:crypto';
import { givenName, priceListTerms, priceMappingSchema } from '@scantling/contracts';
import { z } from 'zod';
import type { Services } from '../../services.ts';
import { workOutImpact } from '../price-impacts/work-out-impact.ts';
import { importPriceFile } from '../price-lists/import-price-file.ts';
import { rememberMapping } from '../price-lists/price-import-records.ts';
import { dayText } from '../price-lists/price-list-records.ts';
import { demoFile, demoJson } from './demo-files.ts';

const listsSchema = z.array(
  z.strictObject({
    supplier: z.string(),
    file: z.string(),
    name: givenName,
    validFrom: priceListTerms.shape.validFrom,
    isComplete: z.boolean(),
    /** Taken over when the quotes are there, so that it moves them. */
    comesAfterQuotes: z.boolean().default(false),
    mapping: priceMappingSchema,
  }),
);
type DemoList = z.output<typeof listsSchema>[number];

export interface DemoPrices {
  /** By the suppliers' codes. */
  readonly supplierIds: ReadonlyMap<string, string>;
  /** Who imports, as lists name it. */
  readonly createdBy: string;
  /** Which lists: those that were there before the quotes, or those that came after. */
  readonly isAfterQuotes: boolean;
}

async function demoLists(): Promise<DemoList[]> {
  return listsSchema.parse(await demoJson('price-lists.json'));
}

function listFile({ file }: DemoList): Promise<Buffer> {
  return demoFile(`price-lists/${file}`);
}

/** The SHA-256 of each list of the demo, by which its lists are told from a person's. */
export async function demoListHashes(): Promise<string[]> {
  const files = await Promise.all((await demoLists()).map(listFile));
  return files.map((bytes) => createHash('sha256').update(bytes).digest('hex'));
}

/**
 * Imports the dated price lists of the demo, the oldest first, by the steps a person takes with a file.
 * @throws RequestProblem import-unreadable; Error naming the list that was not taken over
 */
export async function enterPrices(
  services: Pick<Services, 'database' | 'clock'>,
  { supplierIds, createdBy, isAfterQuotes }: DemoPrices,
): Promise<void> {
  for (const list of await demoLists()) {
    if (list.comesAfterQuotes !== isAfterQuotes) continue;
    const { supplier, file, name, validFrom, isComplete, mapping } = list;
    const supplierId = supplierIds.get(supplier) ?? '';
    await rememberMapping(services.database, supplierId, mapping);
    const terms = { supplierId, name, validFrom, isComplete };
    const bytes = await listFile(list);
    const { status, problem, priceListId } = await importPriceFile(services, {
      terms,
      fileName: file,
      bytes,
      createdBy,
    });
    if (status !== 'applied')
      throw new Error(`prisma/demo/price-lists/${file} is ${status}: ${problem ?? 'no reason given'}`);
    // Before there is a quote, no list moves one.
    if (!isAfterQuotes) await services.database.priceImpact.deleteMany({ where: { list: { supplierId } } });
    else if (priceListId !== null)
      await workOutImpact(services.database, priceListId, dayText(services.clock()));
  }
}
