import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import { fontFolders } from './font-files.ts';
import type { TypesettingSetup } from './typesetting-job.ts';

const MOST_MEGABYTES = 512;

/** Starts the thread that sets papers. It keeps no process alive by itself. */
export function startTypesettingThread(): Worker {
  const setup: TypesettingSetup = {
    // The build puts worker and template beside the bundle.
    template: fileURLToPath(new URL('./template', import.meta.url)),
    fontFolders: fontFolders(),
  };
  const thread = new Worker(new URL('./paper-worker.mjs', import.meta.url), {
    workerData: setup,
    // Whatever the process was started with, such as a loader for TypeScript, is none of the thread's business.
    execArgv: [],
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEGABYTES },
  });
  thread.unref();
  return thread;
}
