import { randomBytes } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/**
 * The secret that signs session cookies, made at the first start and kept in the data folder (mode 600), so that
 * people stay signed in across restarts. The first of two starters wins; the other reads what it wrote.
 */
export async function readSessionSecret(dataDir: string): Promise<string> {
  const path = join(dataDir, 'session-secret');
  await mkdir(dataDir, { recursive: true });
  try {
    await writeFile(path, randomBytes(48).toString('base64url'), { flag: 'wx', mode: 0o600 });
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
  }
  return readFile(path, 'utf8');
}
