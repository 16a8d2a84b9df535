import type { FastifyRequest } from 'fastify';
import { Tinypool } from 'tinypool';
import { isProblemCode, PROBLEM_TABLE } from '../problems/problem-table.ts';
import { RequestProblem } from '../problems/request-problem.ts';
import type {
  AnswerTo,
  CalculationJob,
  CalculationOutcome,
  QuestionName,
  QuestionOf,
} from './calculation-job.ts';

export interface CalculationSettings {
  /** How long one question may take, waiting included, in ms. */
  readonly timeLimit?: number;
  /** Questions that may wait; more are refused. */
  readonly mostWaiting?: number;
}

export interface CalculationThreads {
  /**
   * The answer to a question about a table of figures, worked out beside the requests. It is given up when who asked
   * has gone.
   * @throws RequestProblem for what the table or question holds, calculation-too-slow, calculations-busy
   */
  ask<Name extends QuestionName>(
    name: Name,
    question: QuestionOf<Name>,
    request: FastifyRequest,
  ): Promise<AnswerTo<Name>>;
  /** Questions that are asked and not answered yet. */
  underWay(): number;
  /** Ends the threads; a question under way fails. */
  close(): Promise<void>;
}

// The build puts the thread beside the bundle; from source it needs a loader for TypeScript first.
const THREAD = import.meta.url.endsWith('.ts')
  ? new URL('../../../../scripts/calculation-thread-from-source.mjs', import.meta.url)
  : new URL('./calculation-thread.js', import.meta.url);

/** Aborts when the caller hangs up, or after the time. */
function untilGone(request: FastifyRequest, timeLimit: number): { signal: AbortSignal; stop: () => void } {
  const gone = new AbortController();
  const leave = () => gone.abort();
  const { socket } = request.raw;
  socket.once('close', leave);
  return {
    signal: AbortSignal.any([gone.signal, AbortSignal.timeout(timeLimit)]),
    stop: () => socket.off('close', leave),
  };
}

function answerIn(outcome: CalculationOutcome): unknown {
  if (outcome.kind === 'answer') return outcome.answer;
  const { code, message, field, reason = message } = outcome;
  if (!isProblemCode(code))
    throw new RequestProblem('unexpected', { cause: new Error(`${code}: ${message}`) });
  const mend = outcome.mend ?? PROBLEM_TABLE[code].mend;
  const errors = field === undefined ? [] : [{ field, message: reason, mend }];
  throw new RequestProblem(code, { detail: message, errors });
}

const MOST_THREADS = 2;

/** A pool of at most two threads, started with the first question and ended when idle. */
export function createCalculationThreads(settings: CalculationSettings = {}): CalculationThreads {
  const { timeLimit = 20_000, mostWaiting = 50 } = settings;
  const pool = new Tinypool({
    filename: THREAD.href,
    name: 'answerQuestion',
    minThreads: 0,
    maxThreads: MOST_THREADS,
    idleTimeout: 60_000,
    maxQueue: Number.POSITIVE_INFINITY,
    isolateWorkers: false,
    resourceLimits: { maxOldGenerationSizeMb: 512 },
    // Whatever the process was started with is none of the thread's business.
    execArgv: [],
  });
  let underWay = 0;
  return {
    async ask<Name extends QuestionName>(name: Name, question: QuestionOf<Name>, request: FastifyRequest) {
      if (underWay >= MOST_THREADS + mostWaiting) throw new RequestProblem('calculations-busy');
      const job: CalculationJob<Name> = { name, question };
      const { signal, stop } = untilGone(request, timeLimit);
      underWay += 1;
      try {
        const outcome: CalculationOutcome = await pool.run(job, { signal });
        return answerIn(outcome) as AnswerTo<Name>;
      } catch (error) {
        if (signal.aborted) throw new RequestProblem('calculation-too-slow', { cause: error });
        throw error;
      } finally {
        stop();
        underWay -= 1;
      }
    },
    underWay: () => underWay,
    close: () => pool.destroy(),
  };
}
