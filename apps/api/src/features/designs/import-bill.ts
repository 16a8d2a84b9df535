import { importBill } from '@scantling/contracts';
import { checkBill, placeProblem } from '@scantling/costing';
import { handle, signedIn } from '../../handle.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';
import { lengthUnitOf, readBillFile } from './bill-file.ts';
import { readRememberedBillMapping, rememberBillMapping } from './bill-mapping-records.ts';
import { findDesign } from './design-records.ts';
import { knownCodes } from './known-codes.ts';
import { saveRevision } from './save-revision.ts';

export const answerImportBill = handle(
  importBill,
  async ({ params: { id }, query, actor, services, expectedVersion, file }) => {
    const { database } = services;
    const design = await findDesign(database, id);
    if (design === null) throw notFound('design');
    const upload = await file();
    const kept = await readRememberedBillMapping(database);
    const matching = { said: query.mapping, kept };
    const { lines, ...read } = await readBillFile(upload, lengthUnitOf(design.unitSystem), matching);
    if (query.mapping !== undefined && read.missingColumns.length === 0)
      await rememberBillMapping(database, query.mapping);
    const unknown =
      read.bill === null || lines === null
        ? []
        : checkBill(read.bill, await knownCodes(database)).map((problem) => placeProblem(problem, lines));
    const problems = [...read.problems, ...unknown].sort((a, b) => a.line - b.line);
    const answer = {
      bill: problems.length === 0 ? read.bill : null,
      problems,
      ignoredHeaders: [...read.ignoredHeaders],
      headers: [...read.headers],
      mapping: read.mapping,
      missingColumns: [...read.missingColumns],
    };
    if (design.version !== expectedVersion()) throw new RequestProblem('version-stale');
    if (query.preview === 'true' || answer.bill === null)
      return { ...answer, isApplied: false, version: design.version };
    const { bill } = answer;
    const saved = await database.$transaction((transaction) =>
      saveRevision(transaction, {
        id,
        version: expectedVersion(),
        fields: {},
        bill,
        note: `Read from ${upload.name}`,
        createdBy: signedIn(actor).id,
      }),
    );
    return { ...answer, isApplied: true, version: saved.version };
  },
);
