import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import type { Paper } from '@scantling/quoting';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { PaperNotMadeError, PaperPictureError, PapersBusyError, PaperTooSlowError } from './paper-errors.ts';
import { createPaperRenderer } from './paper-renderer.ts';
import { readPdf } from './samples/read-pdf.ts';
import { SAMPLE_RECEIPT } from './samples/sample-papers.ts';
import { sampleQuote } from './samples/sample-quote.ts';
import { SAMPLE_PICTURES } from './samples/sample-workshop.ts';
import { startTypesettingThread } from './typesetting-thread.ts';

// A thread and its fonts take their time on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const renderer = createPaperRenderer();
afterAll(() => renderer.close());

/** A thread that does what the text says when a paper comes. */
function threadThat(act: string): Worker {
  const script = `require('node:worker_threads').parentPort.on('message', () => { ${act} });`;
  return new Worker(script, { eval: true });
}

/** The first thread is as given, all others are real. */
function afterThread(act: string): () => Worker {
  let isFirst = true;
  return () => {
    const thread = isFirst ? threadThat(act) : startTypesettingThread();
    isFirst = false;
    return thread;
  };
}

describe('bytes', () => {
  it('are the same for the same paper, also from another thread and after other papers', async () => {
    const quote = sampleQuote({ size: 'a4' });
    const first = await renderer.render(quote, SAMPLE_PICTURES);
    await renderer.render(SAMPLE_RECEIPT, SAMPLE_PICTURES);
    const again = await renderer.render(quote, SAMPLE_PICTURES);
    await renderer.close();
    const anew = await renderer.render(quote, SAMPLE_PICTURES);
    expect(Buffer.compare(first, again)).toBe(0);
    expect(Buffer.compare(first, anew)).toBe(0);
    const other = await renderer.render({ ...quote, number: 'Q-2026-0008' }, SAMPLE_PICTURES);
    expect(Buffer.compare(first, other)).not.toBe(0);
  });

  it('are right for each where many are asked for at once', async () => {
    const papers = Array.from(
      { length: 8 },
      (_, at): Paper => ({ ...SAMPLE_RECEIPT, title: `Receipt ${at}`, number: `R-${at}` }),
    );
    const made = await Promise.all(papers.map((paper) => renderer.render(paper, SAMPLE_PICTURES)));
    const read = await Promise.all(made.map(readPdf));
    expect(read.map(({ title }) => title)).toEqual(papers.map(({ title }) => title));
    expect(read.every(({ pages }, at) => pages[0]?.includes(`R-${at}`))).toBe(true);
  });
});

describe('what goes wrong', () => {
  it.each([
    ['ends', 'process.exit(3);'],
    ['fails', "throw new Error('out of order');"],
  ])('in a thread that %s is told, and the next paper comes from a new one', async (_, act) => {
    const own = createPaperRenderer({ startThread: afterThread(act) });
    const first = own.render(SAMPLE_RECEIPT, SAMPLE_PICTURES);
    const second = own.render(SAMPLE_RECEIPT, SAMPLE_PICTURES);
    await expect(first).rejects.toBeInstanceOf(PaperNotMadeError);
    expect((await readPdf(await second)).title).toBe(SAMPLE_RECEIPT.title);
    await own.close();
  });

  it('by taking too long is ended, and the next paper gets another thread', async () => {
    const ends: Promise<unknown>[] = [];
    const startThread = () => {
      const thread = threadThat('for (;;) {}');
      ends.push(once(thread, 'exit'));
      return thread;
    };
    const own = createPaperRenderer({ startThread, timeLimit: 50 });
    await expect(own.render(SAMPLE_RECEIPT, SAMPLE_PICTURES)).rejects.toBeInstanceOf(PaperTooSlowError);
    await expect(own.render(SAMPLE_RECEIPT, SAMPLE_PICTURES)).rejects.toBeInstanceOf(PaperTooSlowError);
    await Promise.all(ends);
    expect(ends).toHaveLength(2);
  });

  it('by asking for too much is refused before it waits', async () => {
    const own = createPaperRenderer({ startThread: () => threadThat(''), mostWaiting: 1, timeLimit: 60_000 });
    const waiting = own.render(SAMPLE_RECEIPT, SAMPLE_PICTURES);
    await expect(own.render(SAMPLE_RECEIPT, SAMPLE_PICTURES)).rejects.toBeInstanceOf(PapersBusyError);
    await own.close();
    await expect(waiting).rejects.toBeInstanceOf(PaperNotMadeError);
  });

  it('with a damaged picture names it, and spoils no other paper', async () => {
    const logo = SAMPLE_RECEIPT.letterhead.logo;
    if (logo === null) throw new Error('the sample has a logo');
    const whole = SAMPLE_PICTURES.get(logo.sha256) ?? new Uint8Array();
    const broken = new Map([[logo.sha256, whole.slice(0, whole.length / 2)]]);
    const failure = renderer.render(SAMPLE_RECEIPT, broken);
    await expect(failure).rejects.toBeInstanceOf(PaperPictureError);
    await expect(failure).rejects.toMatchObject({ field: 'letterhead.logo' });
    expect((await renderer.render(SAMPLE_RECEIPT, SAMPLE_PICTURES)).length).toBeGreaterThan(1000);
  });

  it('in the template is said without paths of the machine', async () => {
    const impossible = {
      ...SAMPLE_RECEIPT,
      letterhead: { ...SAMPLE_RECEIPT.letterhead, logo: null },
      totals: 5,
    };
    const broken: Paper = JSON.parse(JSON.stringify(impossible));
    const failure = await renderer.render(broken, SAMPLE_PICTURES).catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(PaperNotMadeError);
    expect(String(failure)).toMatch(/integer|method|type/);
    expect(String(failure)).not.toMatch(/[\\/](?:src|template|home|tmp|crew)/);
  });
});

it('a thread is replaced after some papers', async () => {
  let started = 0;
  const own = createPaperRenderer({
    papersPerThread: 2,
    startThread: () => {
      started += 1;
      return startTypesettingThread();
    },
  });
  for (let paper = 0; paper < 5; paper += 1) await own.render(SAMPLE_RECEIPT, SAMPLE_PICTURES);
  await own.close();
  expect(started).toBe(3);
});
