import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const checkout = fileURLToPath(new URL('../../', import.meta.url));
const readyLine = /Scantling is ready at (http:\/\/\S+)/;

export type Application = {
  process: ChildProcess;
  /** Resolves with the address once the ready line is printed; rejects with the output where it ends before. */
  ready: Promise<string>;
  /** Resolves with the exit code, or the signal that ended it. */
  ended: Promise<number | NodeJS.Signals | null>;
  /** Everything printed so far, errors included. */
  output: () => string;
  /** SIGTERM, then the end. */
  stop: () => Promise<void>;
};

/** Starts the built product (npm run build) as a process of its own, with settings from `environment`. */
export function spawnApplication(environment: Readonly<Record<string, string>>): Application {
  const server = join(checkout, 'apps', 'api', 'dist', 'server.js');
  const { DATABASE_URL: _url, PUBLIC_URL: _public, ...inherited } = process.env;
  const child = spawn(process.execPath, ['--enable-source-maps', server], {
    cwd: checkout,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...inherited, HOST: '127.0.0.1', PORT: '0', LOG_LEVEL: 'warn', ...environment },
  });
  let text = '';
  const ended = new Promise<number | NodeJS.Signals | null>((resolve) => {
    child.once('close', (code, signal) => resolve(code ?? signal));
  });
  const ready = new Promise<string>((resolve, reject) => {
    const read = (chunk: Buffer) => {
      text += chunk.toString('utf8');
      const address = readyLine.exec(text)?.[1];
      if (address !== undefined) resolve(address);
    };
    child.stdout.on('data', read);
    child.stderr.on('data', read);
    ended.then((how) => reject(new Error(`The product ended (${how}) before it was ready:\n${text}`)));
  });
  // Who does not wait for readiness shall not be ended by its failure.
  ready.catch(() => undefined);
  const stop = async () => {
    if (child.exitCode === null && child.signalCode === null) child.kill('SIGTERM');
    await ended;
  };
  return { process: child, ready, ended, output: () => text, stop };
}

export type RunningApplication = {
  address: string;
  dataDir: string;
  output: () => string;
  stop: () => Promise<void>;
};

/** The built product on a free port with a database and a data folder of its own, both gone after `stop`. */
export async function startApplication(
  environment: Readonly<Record<string, string>> = {},
): Promise<RunningApplication> {
  const dataDir = mkdtempSync(join(tmpdir(), 'scantling-product-'));
  const application = spawnApplication({
    SCANTLING_DATA_DIR: dataDir,
    SCANTLING_DEMO: 'off',
    ...environment,
  });
  const stop = async () => {
    await application.stop();
    rmSync(dataDir, { recursive: true, force: true });
  };
  try {
    return { address: await application.ready, dataDir, output: application.output, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}
