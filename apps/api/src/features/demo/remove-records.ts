import type { DemoContent } from '@scantling/contracts';
import { removeDemoDocuments } from '../../documents/store-document.ts';
import type { Prisma } from '../../generated/prisma/client.ts';
import { forgetDemoNumbers } from '../../numbers/next-number.ts';
import { removeDemoPictures } from '../../pictures/picture-records.ts';
import { picturesShown } from '../../pictures/shown-pictures.ts';
import { toWorkshop } from '../../shop/workshop-record.ts';
import { DEMO_EMAIL } from '../../sign-in/demo-rule.ts';
import { hashOf, newSecret } from '../../sign-in/secret-text.ts';
import { picturesInQuotes, removeDemoQuotes } from '../quotes/demo-quotes.ts';
import { countDemo } from './demo-content.ts';
import { readDemoWorkshop } from './enter-shop.ts';
import { findKeptRecords, type KeptRecords } from './kept-records.ts';

const DEMO = { isDemo: true } as const;
const OWN = { isDemo: false } as const;

/** Makes what stays the workshop's own, so that nothing marks it as the demo's any longer. */
async function adopt(transaction: Prisma.TransactionClient, kept: KeptRecords): Promise<void> {
  const among = (ids: readonly string[]) => ({ where: { id: { in: [...ids] } }, data: OWN });
  await transaction.design.updateMany(among(kept.designs));
  await transaction.client.updateMany(among(kept.clients));
  await transaction.costSheet.updateMany(among(kept.costSheets));
  await transaction.scenario.updateMany({ where: { costSheetId: { in: [...kept.costSheets] } }, data: OWN });
  await transaction.material.updateMany(among(kept.materials));
  await transaction.supplier.updateMany(among(kept.suppliers));
  await transaction.labourGrade.updateMany(among(kept.grades));
  await transaction.tool.updateMany(among(kept.tools));
  const currencies = { in: [...kept.currencies] };
  await transaction.exchangeRate.updateMany({
    where: { ...DEMO, OR: [{ from: currencies }, { to: currencies }] },
    data: OWN,
  });
}

/** Imports and remembered columns hang on suppliers and designs by id alone. */
async function removeImports(transaction: Prisma.TransactionClient): Promise<void> {
  const suppliers = await transaction.supplier.findMany({ where: DEMO, select: { id: true } });
  const designs = await transaction.design.findMany({ where: DEMO, select: { id: true } });
  const supplierId = { in: suppliers.map(({ id }) => id) };
  const designId = { in: designs.map(({ id }) => id) };
  const where = { OR: [{ supplierId }, { designId }] };
  const imports = await transaction.fileImport.findMany({ where, select: { id: true } });
  await transaction.fileImportRow.deleteMany({ where: { importId: { in: imports.map(({ id }) => id) } } });
  await transaction.fileImport.deleteMany({ where });
  await transaction.importMapping.deleteMany({ where: { supplierId } });
}

async function removeUser(transaction: Prisma.TransactionClient): Promise<void> {
  const user = { email: DEMO_EMAIL, isDemo: true };
  await transaction.apiToken.deleteMany({ where: { createdBy: user } });
  await transaction.user.deleteMany({ where: user });
  if ((await transaction.user.count()) > 0) return;
  // Says that this is no first start, which would bring the demo back; nobody holds this link.
  const row = { hash: hashOf(newSecret()), createdAt: new Date() };
  await transaction.setUpLink.upsert({ where: { id: 1 }, create: row, update: row });
}

/**
 * The demo's workshop goes unless somebody has made it their own: changed it, or put records of theirs into it.
 * @returns the invented name, where a workshop stays that still bears it
 */
async function removeWorkshop(
  transaction: Prisma.TransactionClient,
  hasKept: boolean,
): Promise<string | null> {
  const { name } = await readDemoWorkshop();
  const own = await Promise.all([
    transaction.design.count(),
    transaction.material.count(),
    transaction.labourGrade.count(),
    transaction.tool.count(),
    transaction.overheadAmount.count(),
    transaction.supplier.count(),
    transaction.client.count(),
    transaction.enquiry.count(),
  ]);
  if (!hasKept && own.every((count) => count === 0)) {
    await transaction.workshop.deleteMany({ where: { name, version: 1 } });
  }
  await transaction.workshop.updateMany({ data: { hasDemo: false } });
  return (await transaction.workshop.count({ where: { name } })) === 0 ? null : name;
}

/** Pictures that records which stay use. */
async function picturesThatStay(transaction: Prisma.TransactionClient): Promise<string[]> {
  const row = await transaction.workshop.findUnique({ where: { id: 1 } });
  const logo = row === null ? null : toWorkshop(row).settings.letterhead.logo;
  const quoted = await picturesInQuotes(transaction);
  const shown = await picturesShown(transaction);
  return logo === null ? [...quoted, ...shown] : [logo.sha256, ...quoted, ...shown];
}

export type Removal = { removed: DemoContent; kept: KeptRecords; inventedName: string | null };

/** Removes every record of the demo but those that own records rest on, which become own. */
export async function removeRecords(transaction: Prisma.TransactionClient): Promise<Removal> {
  const kept = await findKeptRecords(transaction);
  await adopt(transaction, kept);
  const removed = await countDemo(transaction);
  await removeImports(transaction);
  await transaction.enquiry.deleteMany({ where: DEMO });
  await removeDemoQuotes(transaction);
  await transaction.costSheet.deleteMany({ where: DEMO });
  await transaction.design.deleteMany({ where: DEMO });
  await transaction.client.deleteMany({ where: DEMO });
  await transaction.person.deleteMany({ where: DEMO });
  await transaction.labourGrade.deleteMany({ where: DEMO });
  await transaction.tool.deleteMany({ where: DEMO });
  await transaction.overheadAmount.deleteMany({ where: DEMO });
  await transaction.supplier.deleteMany({ where: DEMO });
  await transaction.material.deleteMany({ where: DEMO });
  await transaction.exchangeRate.deleteMany({ where: DEMO });
  await transaction.outboxMail.deleteMany({ where: DEMO });
  await removeDemoDocuments(transaction);
  await forgetDemoNumbers(transaction);
  await removeUser(transaction);
  const ids = Object.values(kept).flat();
  const inventedName = await removeWorkshop(transaction, ids.length > 0);
  await removeDemoPictures(transaction, await picturesThatStay(transaction));
  return { removed, kept, inventedName };
}
