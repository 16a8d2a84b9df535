import { type DemoContent, loadDemo as loadDemoContract } from '@scantling/contracts';
import type { Config } from '../../config.ts';
import type { Database } from '../../database/connect.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { handle } from '../../handle.ts';
import type { Services } from '../../services.ts';
import { addUser } from '../../sign-in/add-user.ts';
import { DEMO_EMAIL } from '../../sign-in/demo-rule.ts';
import { countDemo } from './demo-content.ts';
import { inOneStep, withDemoLock } from './demo-lock.ts';
import { enterCostSheets, enterDesigns } from './enter-designs.ts';
import { enterEnquiries } from './enter-enquiries.ts';
import { enterInvoices } from './enter-invoices.ts';
import { enterMaterials } from './enter-materials.ts';
import { enterPictures } from './enter-pictures.ts';
import { enterPrices } from './enter-prices.ts';
import { enterQuotes } from './enter-quotes.ts';
import { enterShop } from './enter-shop.ts';
import { removeRecords } from './remove-records.ts';
import { requireRoom } from './require-room.ts';

/** The demo user's password, which the README states; it holds on the machine itself only. */
export const DEMO_PASSWORD = 'plane-and-scraper';

export type LoadedDemo = { isNew: boolean; content: DemoContent };

/** True where a load was cut off: its user is there, and nothing says that it came to its end. */
export async function isHalfLoaded(database: Prisma.TransactionClient): Promise<boolean> {
  const [users, loaded] = await Promise.all([
    database.user.count({ where: { email: DEMO_EMAIL, isDemo: true } }),
    database.workshop.count({ where: { hasDemo: true } }),
  ]);
  return users > 0 && loaded === 0;
}

async function enterBasics(transaction: Prisma.TransactionClient) {
  if (await isHalfLoaded(transaction)) await removeRecords(transaction);
  await requireRoom(transaction);
  const { id: userId } = await addUser(transaction, {
    name: 'Odalie Quarrenstile (demo)',
    email: DEMO_EMAIL,
    password: DEMO_PASSWORD,
    role: 'owner',
    isDemo: true,
  });
  await enterShop(transaction);
  return { userId, supplierIds: await enterMaterials(transaction) };
}

async function enterRest(
  transaction: Prisma.TransactionClient,
  userId: string,
  { now, config }: { now: Date; config: Config },
): Promise<void> {
  await enterCostSheets(transaction, await enterDesigns(transaction, userId), now);
  await enterEnquiries(transaction, userId, now);
  await enterPictures(transaction);
  await enterQuotes(transaction, { createdBy: `user:${userId}`, now, config });
  await enterInvoices(transaction, { createdBy: `user:${userId}`, now });
}

async function markLoaded(transaction: Prisma.TransactionClient): Promise<DemoContent> {
  await transaction.workshop.updateMany({ data: { hasDemo: true } });
  return countDemo(transaction);
}

/**
 * Loads the invented workshop of prisma/demo by the code that takes a person's files, whole or not at all: a load that
 * fails is taken back, one that was cut off is begun anew. Where it is loaded already nothing changes.
 * @throws RequestProblem already-exists where own records are in the way
 */
export function loadDemo(
  database: Database,
  { clock, config }: Pick<Services, 'clock' | 'config'>,
): Promise<LoadedDemo> {
  return withDemoLock(database, async (locked) => {
    const isLoaded = (await locked.workshop.count({ where: { hasDemo: true } })) > 0;
    if (isLoaded) return { isNew: false, content: await countDemo(locked) };
    const { userId, supplierIds } = await inOneStep(database, enterBasics);
    try {
      const by = { supplierIds, createdBy: `user:${userId}` };
      await enterPrices({ database, clock }, { ...by, isAfterQuotes: false });
      await inOneStep(database, (transaction) => enterRest(transaction, userId, { now: clock(), config }));
      await enterPrices({ database, clock }, { ...by, isAfterQuotes: true });
      return { isNew: true, content: await inOneStep(database, markLoaded) };
    } catch (error) {
      await inOneStep(database, removeRecords);
      throw error;
    }
  });
}

export const answerLoadDemo = handle(loadDemoContract, ({ services }) =>
  loadDemo(services.database, services),
);
