import type { Worker } from 'node:worker_threads';
import {
  CuttingCancelledError,
  CuttingImpossibleError,
  CuttingInputError,
  type CuttingInstance,
  type CuttingPlan,
  type SearchProgress,
} from '@scantling/cutting';
import type { CuttingJob, CuttingMessage } from './cutting-job.ts';
import { startCuttingThread } from './cutting-thread.ts';
import { CuttingBusyError, CuttingFailedError } from './planner-errors.ts';

export interface CuttingPlannerSettings {
  /** After so many plans the thread is replaced, since the solver gives no memory back. */
  readonly plansPerThread?: number;
  /** Plans that may wait; more are refused. */
  readonly mostWaiting?: number;
  /** How much longer than asked a plan may take before its thread is ended, in ms. */
  readonly graceMs?: number;
  readonly startThread?: () => Worker;
}

export interface PlanRequest {
  readonly timeLimitMs: number;
  /** Calls the plan off, waiting or under way. */
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: SearchProgress) => void;
}

export interface CuttingPlanner {
  /**
   * A checked plan and the time its search took; waiting for the plans before it does not count.
   * @throws CuttingInputError, CuttingImpossibleError for the instance; CuttingCancelledError, CuttingBusyError,
   * CuttingFailedError
   */
  plan(instance: CuttingInstance, request: PlanRequest): Promise<{ plan: CuttingPlan; elapsedMs: number }>;
  /** Ends the thread; a plan under way fails. */
  close(): Promise<void>;
}

/** How long a plan called off may take to notice. */
const PATIENCE_MS = 1500;

type Answer = Exclude<CuttingMessage, { kind: 'progress' }>;

/** Hands one job to the thread and waits for its answer, its end or the end of the time. */
function runJob(thread: Worker, job: CuttingJob, mostMs: number, request: PlanRequest): Promise<Answer> {
  return new Promise((resolve, reject) => {
    let patience: NodeJS.Timeout | undefined;
    const callOff = () => {
      Atomics.store(new Int32Array(job.cancelled), 0, 1);
      // The solver does not look up while it works on one integer program; then the thread ends with it.
      patience = setTimeout(() => settle(() => reject(new CuttingCancelledError())), PATIENCE_MS);
    };
    const settle = (act: () => void) => {
      clearTimeout(timer);
      clearTimeout(patience);
      request.signal?.removeEventListener('abort', callOff);
      thread.off('message', heard).off('error', failed).off('exit', ended).unref();
      act();
    };
    const heard = (message: CuttingMessage) => {
      if (message.kind === 'progress') request.onProgress?.(message.progress);
      else settle(() => resolve(message));
    };
    const failed = (cause: unknown) =>
      settle(() => reject(new CuttingFailedError('the thread failed', { cause })));
    const ended = () => settle(() => reject(new CuttingFailedError('the thread ended')));
    const timer = setTimeout(
      () => settle(() => reject(new CuttingFailedError('it did not end in time'))),
      mostMs,
    );
    thread.on('message', heard).on('error', failed).on('exit', ended);
    request.signal?.addEventListener('abort', callOff);
    // While a plan is under way the process stays.
    thread.ref();
    thread.postMessage(job);
  });
}

function planOf(answer: Answer): { plan: CuttingPlan; elapsedMs: number } {
  switch (answer.kind) {
    case 'planned':
      return { plan: answer.plan, elapsedMs: answer.elapsedMs };
    case 'cancelled':
      throw new CuttingCancelledError();
    case 'failed':
      throw new CuttingFailedError(answer.text);
    case 'refused': {
      const { code, field, reason, mend } = answer;
      if (code === 'cutting-input') throw new CuttingInputError(field, reason, mend);
      throw new CuttingImpossibleError(field, reason, mend);
    }
  }
}

/** Plans one after the other in a thread of its own, which is replaced after some plans and after a failure. */
export function createCuttingPlanner(settings: CuttingPlannerSettings = {}): CuttingPlanner {
  const { plansPerThread = 50, mostWaiting = 20, graceMs = 20_000 } = settings;
  const { startThread = startCuttingThread } = settings;
  let thread: Worker | null = null;
  let plansOfThread = 0;
  let waiting = 0;
  let last: Promise<unknown> = Promise.resolve();

  const endThread = async () => {
    const ending = thread;
    thread = null;
    await ending?.terminate();
  };

  const readyThread = (): Worker => {
    if (thread !== null) return thread;
    const started = startThread();
    // One that ends between two plans is replaced by the next; without a listener it would end the process.
    const forget = () => {
      if (thread === started) thread = null;
    };
    started.on('error', forget).on('exit', forget);
    thread = started;
    plansOfThread = 0;
    return started;
  };

  const planOne = async (instance: CuttingInstance, request: PlanRequest) => {
    if (request.signal?.aborted === true) throw new CuttingCancelledError();
    const job = { instance, timeLimitMs: request.timeLimitMs, cancelled: new SharedArrayBuffer(4) };
    let answer: Answer;
    try {
      answer = await runJob(readyThread(), job, request.timeLimitMs + graceMs, request);
    } catch (error) {
      await endThread();
      throw error;
    }
    plansOfThread += 1;
    if (plansOfThread >= plansPerThread) await endThread();
    return planOf(answer);
  };

  return {
    async plan(instance, request) {
      if (waiting >= mostWaiting) throw new CuttingBusyError(waiting);
      waiting += 1;
      const turn = last.then(() => planOne(instance, request));
      last = turn.catch(() => undefined);
      try {
        return await turn;
      } finally {
        waiting -= 1;
      }
    },
    close: endThread,
  };
}
