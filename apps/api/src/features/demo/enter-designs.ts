import { Readable } from 'node:stream';
import {
  costSheetFields,
  givenName,
  overallSizeText,
  scenarioFields,
  unitSystemSchema,
} from '@scantling/contracts';
import type { DrawnDesign } from '@scantling/costing';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { lengthUnitOf, readBillFile } from '../designs/bill-file.ts';
import { addRevision, sizeColumns } from '../designs/design-records.ts';
import { requireSoundDrawing } from '../designs/sound-drawing.ts';
import { demoFile, demoJson, demoRows } from './demo-files.ts';

/** The demo's owner, who is said to have kept its scenarios. */
const DEMO_MAKER = 'Odalie Quarrenstile (demo)';

const designRow = z.strictObject({
  code: z.string(),
  name: givenName,
  description: z.string().default(''),
  unitSystem: unitSystemSchema,
  overallLength: z.string(),
  overallWidth: z.string(),
  overallHeight: z.string(),
  bill: z.string(),
});

const { designId: _design, clientId: _client, ...sheetFields } = costSheetFields;
const sheetsSchema = z.array(
  z.strictObject({
    ...sheetFields,
    design: z.string(),
    client: givenName.nullable(),
    scenarios: z.array(scenarioFields).default([]),
  }),
);

/** @throws Error naming the file and line, which only a changed demo file can cause */
async function readDemoDrawing(file: string, unitSystem: string): Promise<DrawnDesign> {
  const content = Readable.from([await demoFile(file)]);
  const { drawing, problems } = await readBillFile({ name: file, content }, lengthUnitOf(unitSystem));
  if (drawing !== null) return drawing;
  const lines = problems.map(({ line, column, message }) => `line ${line}, ${column}: ${message}`);
  throw new Error(`prisma/demo/${file} cannot be read: ${lines.join('; ')}`);
}

/** Designs with their bills, read from files as a person's would be; ids by code. */
export async function enterDesigns(
  transaction: Prisma.TransactionClient,
  createdBy: string,
): Promise<Map<string, string>> {
  const ids = new Map<string, string>();
  for (const row of await demoRows('designs.csv')) {
    const { bill: file, overallLength, overallWidth, overallHeight, ...fields } = designRow.parse(row);
    const size = { length: overallLength, width: overallWidth, height: overallHeight };
    const { unitSystem } = fields;
    const drawing = await readDemoDrawing(file, unitSystem);
    await requireSoundDrawing(transaction, drawing, unitSystem);
    const { id } = await transaction.design.create({
      data: { ...fields, ...sizeColumns(overallSizeText.parse(size)), isDemo: true },
    });
    const note = `Imported from ${file}`;
    await addRevision(transaction, id, { number: 1, drawing, unitSystem, note, createdBy });
    ids.set(fields.code, id);
  }
  return ids;
}

/** What is costed for whom; the sheets are made in the order of the file, the main one first. */
export async function enterCostSheets(
  transaction: Prisma.TransactionClient,
  designIds: ReadonlyMap<string, string>,
  now: Date,
): Promise<void> {
  const clients = await transaction.client.findMany({ where: { isDemo: true } });
  const clientIds = new Map(clients.map(({ id, name }) => [name, id]));
  const sheets = sheetsSchema.parse(await demoJson('cost-sheets.json'));
  for (const [place, given] of sheets.entries()) {
    const { design, client, onDate, terms, scenarios, ...fields } = given;
    const designId = designIds.get(design);
    if (designId === undefined) throw new Error(`prisma/demo/cost-sheets.json names no design "${design}"`);
    await transaction.costSheet.create({
      data: {
        ...fields,
        designId,
        clientId: client === null ? null : (clientIds.get(client) ?? null),
        onDate: onDate === null ? null : new Date(onDate),
        terms: JSON.parse(JSON.stringify(terms)),
        isDemo: true,
        createdAt: new Date(now.getTime() + place),
        scenarios: {
          create: scenarios.map((scenario) => ({ ...scenario, madeBy: DEMO_MAKER, isDemo: true })),
        },
      },
    });
  }
}
