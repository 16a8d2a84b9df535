import type { Worker } from 'node:worker_threads';
import type { Paper } from '@scantling/quoting';
import { PaperNotMadeError, PaperPictureError, PapersBusyError, PaperTooSlowError } from './paper-errors.ts';
import { type PaperPictures, type PreparedPaper, preparePaper } from './prepare-paper.ts';
import type { TypesettingAnswer, TypesettingJob } from './typesetting-job.ts';
import { startTypesettingThread } from './typesetting-thread.ts';

export interface PaperRendererSettings {
  /** How long one paper may take, in ms. */
  readonly timeLimit?: number;
  /** After so many papers the thread is replaced, since the typesetter gives memory back late. */
  readonly papersPerThread?: number;
  /** Papers that may wait; more are refused. */
  readonly mostWaiting?: number;
  readonly startThread?: () => Worker;
}

export interface PaperRenderer {
  /**
   * The paper as PDF, made to PDF/UA-1; the same paper and pictures give the same bytes within a build.
   * @throws PaperCharacterError, PaperPictureError, QuotingInputError for what the paper holds; PaperNotMadeError,
   * PaperTooSlowError, PapersBusyError
   */
  render(paper: Paper, pictures: PaperPictures): Promise<Uint8Array>;
  /** Ends the thread; a paper under way fails. Another paper starts a thread again. */
  close(): Promise<void>;
}

/** Hands one job to the thread and waits for its answer, its end or the end of the time. */
function runJob(thread: Worker, job: TypesettingJob, timeLimit: number): Promise<TypesettingAnswer> {
  return new Promise((resolve, reject) => {
    const settle = (act: () => void) => {
      clearTimeout(timer);
      thread.off('message', answered).off('error', failed).off('exit', ended).unref();
      act();
    };
    const answered = (answer: TypesettingAnswer) => settle(() => resolve(answer));
    const failed = (cause: unknown) =>
      settle(() => reject(new PaperNotMadeError(['the thread failed'], { cause })));
    const ended = () => settle(() => reject(new PaperNotMadeError(['the thread ended'])));
    const timer = setTimeout(() => settle(() => reject(new PaperTooSlowError(timeLimit))), timeLimit);
    thread.on('message', answered).on('error', failed).on('exit', ended);
    // While a paper is under way the process stays.
    thread.ref();
    thread.postMessage(job);
  });
}

function bytesOf(answer: TypesettingAnswer): Uint8Array {
  if (answer.outcome === 'made') return answer.bytes;
  if (answer.outcome === 'failed') throw new PaperNotMadeError(answer.diagnostics);
  throw new PaperPictureError(
    answer.field,
    'cannot be drawn: the file is damaged',
    'Upload the picture again.',
  );
}

/** Sets papers one after the other in a thread of its own, which is replaced after some papers and after a failure. */
export function createPaperRenderer(settings: PaperRendererSettings = {}): PaperRenderer {
  const { timeLimit = 30_000, papersPerThread = 40, mostWaiting = 50 } = settings;
  const { startThread = startTypesettingThread } = settings;
  let thread: Worker | null = null;
  let papersOfThread = 0;
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
    // One that ends between two papers is replaced by the next; without a listener it would end the process.
    const forget = () => {
      if (thread === started) thread = null;
    };
    started.on('error', forget).on('exit', forget);
    thread = started;
    papersOfThread = 0;
    return started;
  };

  const setOne = async (prepared: PreparedPaper): Promise<Uint8Array> => {
    let answer: TypesettingAnswer;
    try {
      answer = await runJob(readyThread(), prepared, timeLimit);
    } catch (error) {
      await endThread();
      throw error;
    }
    papersOfThread += 1;
    if (papersOfThread >= papersPerThread) await endThread();
    return bytesOf(answer);
  };

  return {
    async render(paper, pictures) {
      if (waiting >= mostWaiting) throw new PapersBusyError(waiting);
      const prepared = preparePaper(paper, pictures);
      waiting += 1;
      const turn = last.then(() => setOne(prepared));
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
