import { chmodSync, existsSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { connectOnce } from './connect.ts';
import { readRecord } from './data-folder.ts';
import { type EmbeddedPostgres, startEmbeddedPostgres } from './embedded-postgres.ts';
import { findRunningServer } from './postgres-cluster.ts';

const isRoot = process.getuid?.() === 0;
const lines: string[] = [];
let outer: string;
let dataDir: string;

function start(folder = dataDir): Promise<EmbeddedPostgres> {
  const fallbackRoot = join(outer, 'substitute');
  return startEmbeddedPostgres({
    dataDir: folder,
    log: (line) => lines.push(line),
    isDurable: false,
    fallbackRoot,
  });
}

async function ask(url: string, sql: string): Promise<Record<string, unknown> | undefined> {
  const client = await connectOnce(url);
  try {
    return (await client.query<Record<string, unknown>>(sql)).rows[0];
  } finally {
    await client.end();
  }
}

beforeAll(() => {
  outer = mkdtempSync(join(tmpdir(), 'scantling-embedded-'));
  chmodSync(outer, 0o711);
  dataDir = join(outer, 'data');
});

afterAll(() => rmSync(outer, { recursive: true, force: true }));

describe('startEmbeddedPostgres', () => {
  it('makes a database on 127.0.0.1 with a password of its own, and keeps data and port over a restart', async () => {
    const first = await start();
    const port = new URL(first.url).port;
    try {
      expect(new URL(first.url).hostname).toBe('127.0.0.1');
      expect(await ask(first.url, 'show listen_addresses')).toEqual({ listen_addresses: '127.0.0.1' });
      expect(await ask(first.url, 'show unix_socket_directories')).toEqual({ unix_socket_directories: '' });
      expect(statSync(join(dataDir, 'database-password')).mode & 0o777).toBe(0o600);
      expect(statSync(join(dataDir, 'database.json')).mode & 0o777).toBe(0o600);
      expect(readRecord(dataDir)?.url).toBe(first.url);
      await ask(first.url, 'create table board as select 5 as quarters');
    } finally {
      await first.stop();
    }
    expect(findRunningServer(join(first.folder, 'postgres'))).toBeUndefined();
    const second = await start();
    try {
      expect(new URL(second.url).port).toBe(port);
      expect(await ask(second.url, 'select quarters from board')).toEqual({ quarters: 5 });
    } finally {
      await second.stop();
    }
  });

  it('refuses a data folder that a living instance uses, and leaves that one alone', async () => {
    const first = await start();
    try {
      await expect(start()).rejects.toMatchObject({
        code: 'data-folder-in-use',
        message: expect.stringContaining(dataDir),
      });
      expect(await ask(first.url, 'select 1 as one')).toEqual({ one: 1 });
    } finally {
      await first.stop();
    }
  });

  it('starts over a postmaster.pid whose number another program has meanwhile', async () => {
    const pidFile = join(dataDir, 'postgres', 'postmaster.pid');
    writeFileSync(pidFile, `${process.pid}\n${dataDir}/postgres\n1\n5432\n\n127.0.0.1\n`);
    const server = await start();
    await server.stop();
    expect(existsSync(pidFile)).toBe(false);
  });

  it('refuses the data of another major version', async () => {
    const folder = join(outer, 'older');
    const made = await start(folder);
    await made.stop();
    writeFileSync(join(folder, 'postgres', 'PG_VERSION'), '15\n');
    await expect(start(folder)).rejects.toMatchObject({
      code: 'data-folder-version',
      message: expect.stringMatching(/PostgreSQL 15; this is PostgreSQL 18/),
    });
  });

  it('says so where the kept password is gone or wrong', async () => {
    const path = join(dataDir, 'database-password');
    writeFileSync(path, 'another\n');
    await expect(start()).rejects.toMatchObject({ code: 'data-folder-password' });
    rmSync(path);
    await expect(start()).rejects.toMatchObject({ code: 'data-folder-password' });
  });

  it('names a data folder that cannot be made', async () => {
    const file = join(outer, 'a-file');
    writeFileSync(file, '');
    await expect(start(join(file, 'data'))).rejects.toMatchObject({
      code: 'data-folder-unreachable',
      mend: expect.stringContaining('SCANTLING_DATA_DIR'),
    });
  });

  it.runIf(isRoot)(
    'keeps the database elsewhere, and says where, if its account cannot reach the folder',
    async () => {
      const closed = join(outer, 'closed', 'data');
      const opened = await start(join(outer, 'closed'));
      await opened.stop();
      chmodSync(join(outer, 'closed'), 0o700);
      writeFileSync(join(outer, 'closed', 'somebody-else'), '');
      const server = await start(closed);
      try {
        expect(server.folder.startsWith(join(outer, 'substitute'))).toBe(true);
        expect(lines.at(-2)).toContain(`kept in ${server.folder} instead`);
        expect(readRecord(closed)).toMatchObject({ folder: server.folder, url: server.url });
      } finally {
        await server.stop();
      }
    },
  );
});
