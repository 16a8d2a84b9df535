import {
  clientInputSchema,
  labourGradeInputSchema,
  overheadAmountInputSchema,
  personInputSchema,
  toolInputSchema,
  type UsedPicture,
  workshopInputSchema,
} from '@scantling/contracts';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { keepPicture } from '../../pictures/picture-records.ts';
import { toClientColumns } from '../clients/client-records.ts';
import { checkWorksOut } from '../tools/check-tool.ts';
import { toColumns } from '../tools/tool-row.ts';
import { demoFile, demoJson, demoRows, isYes } from './demo-files.ts';

export async function readDemoWorkshop() {
  return workshopInputSchema.parse(await demoJson('workshop.json'));
}

async function enterLogo(transaction: Prisma.TransactionClient): Promise<UsedPicture> {
  const drawing = await demoFile('logo.png');
  const { sha256 } = await keepPicture(transaction, drawing, { createdBy: 'demo', isDemo: true });
  return { sha256, alternativeText: 'A plover standing among sedge, with a dovetail cut into its wing' };
}

/** Enters the workshop where there is none; one that is there keeps its name and settings. */
async function enterWorkshop(transaction: Prisma.TransactionClient): Promise<void> {
  const given = await readDemoWorkshop();
  given.settings.letterhead.logo = await enterLogo(transaction);
  await transaction.workshop.upsert({ where: { id: 1 }, create: given, update: {} });
}

async function enterPeople(transaction: Prisma.TransactionClient): Promise<void> {
  const ids = new Map<string, string>();
  for (const row of await demoRows('labour-grades.csv')) {
    const given = labourGradeInputSchema.parse({ ...row, isOwner: isYes(row.isOwner) });
    const { id, code } = await transaction.labourGrade.create({ data: { ...given, isDemo: true } });
    ids.set(code, id);
  }
  const people = (await demoRows('people.csv')).map(({ grade = '', ...row }) =>
    personInputSchema.parse({ ...row, gradeId: ids.get(grade) }),
  );
  await transaction.person.createMany({ data: people.map((given) => ({ ...given, isDemo: true })) });
}

async function enterTools(transaction: Prisma.TransactionClient): Promise<void> {
  const tools = z.array(toolInputSchema).parse(await demoJson('tools.json'));
  await transaction.tool.createMany({ data: tools.map((given) => ({ ...toColumns(given), isDemo: true })) });
  for (const { code } of tools) await checkWorksOut(transaction, code);
}

async function enterOverhead(transaction: Prisma.TransactionClient): Promise<void> {
  const amounts = (await demoRows('overhead.csv')).map((row) =>
    overheadAmountInputSchema.parse({ recoveredAs: null, note: '', ...row }),
  );
  await transaction.overheadAmount.createMany({ data: amounts.map((given) => ({ ...given, isDemo: true })) });
}

async function enterClients(transaction: Prisma.TransactionClient): Promise<void> {
  const clients = (await demoRows('clients.csv')).map(({ address = '', country = null, ...row }) =>
    clientInputSchema.parse({
      email: null,
      phone: '',
      taxNumber: '',
      notes: '',
      ...row,
      address: { lines: address.split(', '), countryCode: country },
    }),
  );
  await transaction.client.createMany({
    data: clients.map((given) => ({ ...toClientColumns(given), isDemo: true })),
  });
}

/** Workshop, people, tools, overhead and clients of the demo, checked as a person's entries are. */
export async function enterShop(transaction: Prisma.TransactionClient): Promise<void> {
  await enterWorkshop(transaction);
  await enterPeople(transaction);
  await enterTools(transaction);
  await enterOverhead(transaction);
  await enterClients(transaction);
}
