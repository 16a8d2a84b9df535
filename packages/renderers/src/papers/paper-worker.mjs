// Plain JavaScript, checked by the compiler all the same: a thread is started from source and from the build alike, and
// only the build could translate it. Sets one paper per message; the typesetter works without pause, and its memory
// goes when the thread does.
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';

/** @import { TypesettingAnswer, TypesettingJob, TypesettingSetup } from './typesetting-job.ts' */

/** @type {TypesettingSetup} */
const { template, fontFolders } = workerData;
const compiler = NodeCompiler.create({
  workspace: template,
  fontArgs: [{ fontPaths: [...fontFolders] }],
});

/**
 * The messages alone: places and traces name files of this machine.
 * @param {unknown} error
 */
function messagesOf(error) {
  const text = error instanceof Error ? error.message : String(error);
  const messages = [...text.matchAll(/"?message"?: ?"((?:[^"\\]|\\.)*)"/g)].map((match) => match[1] ?? '');
  return (messages.length > 0 ? messages : [text]).map((message) => message.replaceAll(template, ''));
}

/**
 * @param {string} file of the template
 * @param {Record<string, string>} inputs
 * @param {number} creationTimestamp in seconds
 */
function made(file, inputs, creationTimestamp) {
  const compiled = compiler.compile({ mainFilePath: join(template, file), inputs });
  const document = compiled.result;
  if (document !== null) return compiler.pdf(document, { pdfStandard: 'ua-1', creationTimestamp });
  const failure = compiled.takeError();
  throw new Error(failure === null ? 'no document' : JSON.stringify(compiler.fetchDiagnostics(failure)));
}

/**
 * The first picture that cannot be drawn by itself.
 * @param {TypesettingJob} job
 * @returns {TypesettingAnswer | null}
 */
function badPicture({ pictures, timestamp }) {
  for (const { file, field } of pictures) {
    try {
      made('picture-check.typ', { file }, timestamp);
    } catch {
      return { outcome: 'bad-picture', field };
    }
  }
  return null;
}

/**
 * @param {TypesettingJob} job
 * @returns {TypesettingAnswer}
 */
function answer(job) {
  const pathOf = (/** @type {string} */ file) => join(template, 'pictures', file);
  try {
    for (const { file, bytes } of job.pictures) compiler.mapShadow(pathOf(file), Buffer.from(bytes));
    // Copied out of the pool of buffers, which cannot be handed over.
    const bytes = new Uint8Array(made('paper.typ', { paper: job.json }, job.timestamp));
    return { outcome: 'made', bytes };
  } catch (error) {
    return badPicture(job) ?? { outcome: 'failed', diagnostics: messagesOf(error) };
  } finally {
    for (const { file } of job.pictures) compiler.unmapShadow(pathOf(file));
    compiler.evictCache(0);
  }
}

parentPort?.on('message', (/** @type {TypesettingJob} */ job) => {
  parentPort?.postMessage(answer(job));
});
