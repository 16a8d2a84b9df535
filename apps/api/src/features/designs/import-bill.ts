import { importBill } from '@scantling/contracts';
import { type DrawnDesign, placeProblem } from '@scantling/costing';
import { handle, signedIn } from '../../handle.ts';
import { notFound, RequestProblem } from '../../problems/request-problem.ts';
import { lengthUnitOf, readBillFile } from './bill-file.ts';
import { readRememberedBillMapping, rememberBillMapping } from './bill-mapping-records.ts';
import { findDesign } from './design-records.ts';
import { saveRevision } from './save-revision.ts';
import { problemsOf } from './sound-drawing.ts';

/** A file that says nothing of parameters leaves those of the design as they are. */
function withParameters(read: DrawnDesign, design: DrawnDesign): DrawnDesign {
  if (read.parameters.length > 0 || read.variants.length > 0) return read;
  return { bill: read.bill, parameters: design.parameters, variants: design.variants };
}

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
    const { unitSystem } = design;
    const drawing = read.drawing === null ? null : withParameters(read.drawing, design);
    const unsound =
      drawing === null || lines === null
        ? []
        : (await problemsOf(database, drawing, unitSystem)).map((problem) => placeProblem(problem, lines));
    const problems = [...read.problems, ...unsound].sort((a, b) => a.line - b.line);
    const answer = {
      bill: problems.length === 0 ? (drawing?.bill ?? null) : null,
      parameters: [...(drawing?.parameters ?? design.parameters)],
      variants: [...(drawing?.variants ?? design.variants)],
      problems,
      ignoredHeaders: [...read.ignoredHeaders],
      headers: [...read.headers],
      mapping: read.mapping,
      missingColumns: [...read.missingColumns],
    };
    if (design.version !== expectedVersion()) throw new RequestProblem('version-stale');
    if (query.preview === 'true' || answer.bill === null || drawing === null)
      return { ...answer, isApplied: false, version: design.version };
    const saved = await database.$transaction((transaction) =>
      saveRevision(transaction, {
        id,
        version: expectedVersion(),
        fields: {},
        drawing,
        unitSystem,
        note: `Read from ${upload.name}`,
        createdBy: signedIn(actor).id,
      }),
    );
    return { ...answer, isApplied: true, version: saved.version };
  },
);
