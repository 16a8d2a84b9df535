import { performance } from 'node:perf_hooks';
import { parentPort } from 'node:worker_threads';
import {
  CuttingCancelledError,
  CuttingImpossibleError,
  CuttingInputError,
  createSeededGenerator,
  planCutting,
} from '@scantling/cutting';
import type { CuttingJob, CuttingMessage } from './cutting-job.ts';
import { loadSolver } from './highs-solver.ts';

// The entry of the thread that plans cutting: one job per message, without pause until it is done.

/** The search's effort follows from the time asked for, so that the same question brings the same work. */
const MS_OF_ONE_EFFORT = 2000;
const SEED = 1;
const PROGRESS_EVERY_MS = 100;

const solver = await loadSolver();

function planned({ instance, timeLimitMs, cancelled }: CuttingJob): CuttingMessage {
  const flag = new Int32Array(cancelled);
  const begin = performance.now();
  let told = 0;
  const plan = planCutting(instance, {
    solver,
    random: createSeededGenerator(SEED),
    limits: {
      effort: timeLimitMs / MS_OF_ONE_EFFORT,
      mostMs: timeLimitMs,
      clock: () => performance.now(),
      isCancelled: () => Atomics.load(flag, 0) !== 0,
      onProgress: (progress) => {
        if (performance.now() - told < PROGRESS_EVERY_MS) return;
        told = performance.now();
        send({ kind: 'progress', progress });
      },
    },
  });
  return { kind: 'planned', plan, elapsedMs: Math.round(performance.now() - begin) };
}

function answer(job: CuttingJob): CuttingMessage {
  try {
    return planned(job);
  } catch (error) {
    if (error instanceof CuttingCancelledError) return { kind: 'cancelled' };
    if (error instanceof CuttingInputError || error instanceof CuttingImpossibleError) {
      const { code, field, reason, mend } = error;
      return { kind: 'refused', code, field, reason, mend };
    }
    return { kind: 'failed', text: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

function send(message: CuttingMessage): void {
  parentPort?.postMessage(message);
}

parentPort?.on('message', (job: CuttingJob) => send(answer(job)));
