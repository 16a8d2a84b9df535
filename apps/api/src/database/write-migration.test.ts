import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, inject, it } from 'vitest';
import { findCheckoutFolder } from '../checkout-folder.ts';
import { diffFromLanded, writeMigration } from './write-migration.ts';

const schemaHead = `
datasource db {
  provider = "postgresql"
}
`;

let prismaFolder: string;
const url = inject('databaseServerUrl');

beforeEach(() => {
  prismaFolder = mkdtempSync(join(tmpdir(), 'scantling-schema-'));
});

afterEach(() => rmSync(prismaFolder, { recursive: true, force: true }));

function write(name: string, models: string, at: string): Promise<string | undefined> {
  writeFileSync(join(prismaFolder, 'schema.prisma'), `${schemaHead}${models}`);
  return writeMigration({ url, name, prismaFolder, now: new Date(at) });
}

describe('writeMigration', () => {
  it('writes the first migration, then only what changed, then nothing', async () => {
    const first = await write('first', 'model Board {\n id Int @id\n}', '2026-03-04T05:06:07Z');
    expect(basename(first ?? '')).toBe('20260304050607_first');
    expect(readFileSync(join(first ?? '', 'migration.sql'), 'utf8')).toContain('CREATE TABLE "Board"');

    const changed = 'model Board {\n id Int @id\n species String?\n}';
    const second = await write('add-species', changed, '2026-03-05T00:00:00Z');
    const sql = readFileSync(join(second ?? '', 'migration.sql'), 'utf8');
    expect(sql).toContain('ADD COLUMN     "species" TEXT');
    expect(sql).not.toContain('CREATE TABLE');

    expect(await write('again', changed, '2026-03-06T00:00:00Z')).toBeUndefined();
  });

  it('refuses a name that cannot be a folder', async () => {
    await expect(write('Add species!', '', '2026-03-04T05:06:07Z')).rejects.toThrow(/lower-case/);
  });
});

it('prisma/schema.prisma has no change without its migration', async () => {
  expect(await diffFromLanded(url, join(findCheckoutFolder(), 'prisma'))).toBe('');
});
