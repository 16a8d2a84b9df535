import { Worker } from 'node:worker_threads';

const MOST_MEGABYTES = 1024;

/** The build puts the thread beside the bundle, translated. */
const FILE = import.meta.url.endsWith('.ts') ? './cutting-worker-of-source.mjs' : './cutting-worker.js';

/** Starts the thread that plans cutting. It keeps no process alive by itself. */
export function startCuttingThread(): Worker {
  const thread = new Worker(new URL(FILE, import.meta.url), {
    // Whatever the process was started with is none of the thread's business.
    execArgv: [],
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEGABYTES },
  });
  thread.unref();
  return thread;
}
