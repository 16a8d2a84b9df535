import type { FieldProblem } from '@scantling/contracts';
import type { QuoteDraft } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';
import { requirePictures } from '../../pictures/picture-records.ts';
import { RequestProblem } from '../../problems/request-problem.ts';

type Given = { clientId?: string; enquiryId?: string | null; draft: QuoteDraft };

function problemsOfLines({ lines, taxes }: QuoteDraft): FieldProblem[] {
  const ids = new Set(taxes.map(({ id }) => id));
  return lines.flatMap((line, at) => {
    const problems: FieldProblem[] = [];
    if (!ids.has(line.tax))
      problems.push({
        field: `draft.lines.${at}.tax`,
        message: 'names none of the taxes of this quote',
        mend: 'Choose one of them.',
      });
    if (lines.findIndex(({ id }) => id === line.id) !== at)
      problems.push({
        field: `draft.lines.${at}.id`,
        message: 'is the id of another line',
        mend: 'Give each line an id of its own.',
      });
    return problems;
  });
}

/**
 * Refuses what could never become right by itself: a client, cost sheet or picture that is not there. What is merely
 * unfinished (shares that do not add up yet) may be saved, and is told when the draft is worked out or sent.
 * @throws RequestProblem input-invalid naming every field
 */
export async function checkDraft(
  transaction: Prisma.TransactionClient,
  { clientId, enquiryId, draft }: Given,
): Promise<void> {
  const errors = problemsOfLines(draft);
  if (clientId !== undefined && (await transaction.client.count({ where: { id: clientId } })) === 0)
    errors.push({ field: 'clientId', message: 'names no client', mend: 'Choose one of the clients.' });
  if (enquiryId != null && (await transaction.enquiry.count({ where: { id: enquiryId } })) === 0)
    errors.push({ field: 'enquiryId', message: 'names no enquiry', mend: 'Choose one, or none.' });
  const sheetIds = draft.lines.flatMap((line) => (line.kind === 'cost-sheet' ? [line.costSheetId] : []));
  const sheets = await transaction.costSheet.findMany({
    where: { id: { in: sheetIds } },
    select: { id: true },
  });
  draft.lines.forEach((line, at) => {
    if (line.kind === 'cost-sheet' && !sheets.some(({ id }) => id === line.costSheetId))
      errors.push({
        field: `draft.lines.${at}.costSheetId`,
        message: 'names no cost sheet',
        mend: 'Choose one of the cost sheets.',
      });
  });
  if (errors.length > 0) throw new RequestProblem('input-invalid', { errors });
  await requirePictures(transaction, [
    ...draft.pictures.map(({ sha256 }, at) => ({ field: `draft.pictures.${at}`, sha256 })),
    ...draft.lines.flatMap((line, at) =>
      line.pictures.map(({ sha256 }) => ({ field: `draft.lines.${at}.pictures`, sha256 })),
    ),
  ]);
}

/** The draft as it is kept. */
export function asJson(value: unknown): Prisma.InputJsonValue {
  return JSON.parse(JSON.stringify(value));
}
