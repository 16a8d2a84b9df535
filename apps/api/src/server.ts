import { buildApp } from './app.ts';
import { readConfig } from './config.ts';
import { explain } from './explain-error.ts';
import { runServer, StartInterrupted } from './run-server.ts';
import { backgroundWork } from './start-background.ts';
import { startJobs } from './start-jobs.ts';

/** How long a second Ctrl-C is taken for an echo of the first: npm passes on what the terminal sent as well. */
const echoMs = 2_000;

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}

const interruption = new AbortController();
let interruptedAt = 0;

function onSignal(): void {
  if (!interruption.signal.aborted) {
    interruptedAt = Date.now();
    interruption.abort();
  } else if (Date.now() - interruptedAt > echoMs) {
    process.exit(130);
  }
}

function whenInterrupted(): Promise<void> {
  const { signal } = interruption;
  if (signal.aborted) return Promise.resolve();
  return new Promise((resolve) => signal.addEventListener('abort', () => resolve(), { once: true }));
}

// A reader of the output that goes away (a closed pipe) is no reason to end.
process.stdout.on('error', () => undefined);
for (const name of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(name, onSignal);

let isReady = false;
try {
  const config = readConfig(process.env);
  const product = await runServer(config, {
    buildApp,
    startJobs,
    background: backgroundWork,
    print,
    signal: interruption.signal,
  });
  print(`Scantling is ready at ${product.address}`);
  isReady = true;
  await whenInterrupted();
  await product.stop();
  print('Scantling has stopped.');
  process.exit(0);
} catch (error) {
  if (error instanceof StartInterrupted) process.exit(0);
  process.stderr.write(
    `${isReady ? 'Scantling did not stop cleanly.' : 'Scantling did not start.'}\n${explain(error)}\n`,
  );
  process.exit(1);
}
