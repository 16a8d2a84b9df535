import { importBill } from '@scantling/contracts';
import { checkBill } from '@scantling/costing';
import { handle, signedIn } from '../../handle.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';
import { lengthUnitOf, readBillFile } from './bill-file.ts';
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
    const read = await readBillFile(upload, lengthUnitOf(design.unitSystem));
    const unknown = read.bill === null ? [] : checkBill(read.bill, await knownCodes(database));
    const problems = [
      ...read.problems,
      ...unknown.map(({ field, message, mend }) => ({ line: 0, column: field, message, mend })),
    ];
    const answer = {
      bill: problems.length === 0 ? read.bill : null,
      problems,
      ignoredHeaders: [...read.ignoredHeaders],
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
