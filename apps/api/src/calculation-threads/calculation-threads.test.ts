import { request as send } from 'node:http';
import { exampleFigures } from '@scantling/contracts';
import fastify, { type FastifyInstance } from 'fastify';
import { afterEach, describe, expect, it } from 'vitest';
import { RequestProblem } from '../problems/request-problem.ts';
import type { QuestionOf } from './calculation-job.ts';
import {
  type CalculationSettings,
  type CalculationThreads,
  createCalculationThreads,
} from './calculation-threads.ts';

const QUESTION: QuestionOf<'risk'> = {
  figures: exampleFigures,
  results: ['cost'],
  uncertain: {},
  usesThreePoints: true,
  shape: 'pert',
  doHoursMoveTogether: true,
  samples: 10_000,
  seed: 1,
  percentile: '0.8',
};
// A second or more of work.
const LONG = { ...QUESTION, samples: 20_000_000 };

let app: FastifyInstance | undefined;
let threads: CalculationThreads | undefined;
afterEach(async () => {
  await app?.close();
  await threads?.close();
});

/** An application that asks what it is sent, and tells how each question ended. */
async function listening(settings: CalculationSettings) {
  threads = createCalculationThreads(settings);
  const ended: string[] = [];
  const asking = threads;
  app = fastify();
  app.post<{ Querystring: { long?: string } }>('/', async (request) => {
    try {
      await asking.ask('risk', request.query.long === undefined ? QUESTION : LONG, request);
      ended.push('answered');
    } catch (error) {
      ended.push(error instanceof RequestProblem ? error.code : String(error));
    }
    return ended.at(-1);
  });
  const address = await app.listen({ host: '127.0.0.1', port: 0 });
  return { app, ended, address };
}

describe('a question in a thread', () => {
  it('is given up after its time, and the next one is answered', async () => {
    const { app: asked } = await listening({ timeLimit: 25_000 });
    expect((await asked.inject({ method: 'POST', url: '/' })).body).toBe('answered');
    const short = createCalculationThreads({ timeLimit: 1 });
    const other = fastify();
    other.post('/', async (request) =>
      short.ask('risk', LONG, request).catch((error: { code: string }) => error.code),
    );
    expect((await other.inject({ method: 'POST', url: '/' })).body).toBe('calculation-too-slow');
    await other.close();
    await short.close();
    expect((await asked.inject({ method: 'POST', url: '/' })).body).toBe('answered');
  });

  it('is given up when who asked has gone', async () => {
    const { address, ended } = await listening({ timeLimit: 25_000 });
    const leaving = send(`${address}/?long=1`, { method: 'POST' });
    leaving.on('error', () => undefined);
    leaving.end();
    await expect.poll(() => threads?.underWay(), { timeout: 10_000 }).toBe(1);
    leaving.destroy();
    await expect.poll(() => ended, { timeout: 5000 }).toEqual(['calculation-too-slow']);
    expect(threads?.underWay()).toBe(0);
  });

  it('is refused where too many wait', async () => {
    const { app: asked } = await listening({ timeLimit: 300, mostWaiting: 0 });
    const answers = [1, 2, 3].map(() => asked.inject({ method: 'POST', url: '/?long=1' }));
    const bodies = (await Promise.all(answers)).map(({ body }) => body);
    expect(bodies.sort()).toEqual(['calculation-too-slow', 'calculation-too-slow', 'calculations-busy']);
  });
});
