import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readTable } from '@scantling/renderers';
import { findCheckoutFolder } from '../../checkout-folder.ts';

/** A row of a demo file by its headers in camel case ("pay per hour" is payPerHour); empty cells are left out. */
export type DemoRow = Readonly<Record<string, string>>;

/** The bytes of a file of prisma/demo, as somebody would send them. */
export function demoFile(name: string): Promise<Buffer> {
  return readFile(join(findCheckoutFolder(), 'prisma', 'demo', name));
}

function camelCase(header: string): string {
  return header.trim().replace(/\s+(\w)/g, (_, letter: string) => letter.toUpperCase());
}

/** The rows of a CSV file of prisma/demo. */
export async function demoRows(name: string): Promise<DemoRow[]> {
  const { rows } = await readTable(await demoFile(name));
  const records: DemoRow[] = [];
  let keys: string[] | null = null;
  for await (const { cells } of rows) {
    if (keys === null) {
      keys = cells.map(camelCase);
      continue;
    }
    const named = keys.map((key, at) => [key, cells[at]?.trim() ?? ''] as const);
    records.push(Object.fromEntries(named.filter(([, cell]) => cell !== '')));
  }
  return records;
}

/** A JSON file of prisma/demo; the caller checks it against its schema. */
export async function demoJson(name: string): Promise<unknown> {
  return JSON.parse((await demoFile(name)).toString('utf8'));
}

/** What a yes-or-no cell says; an empty one says no. */
export function isYes(cell: string | undefined): boolean {
  return cell === 'yes';
}
