import { costTermsSchema, designChoiceFields, ownValuesSchema } from '@scantling/contracts';
import { type CostColumn, CostingInputError, type CostSheet, costSheet } from '@scantling/costing';
import { type Figure, input, NoAnswerError, type Source, sum } from '@scantling/figures';
import { CurrencyMismatchError, NoExchangeRateError } from '@scantling/money';
import {
  type CostSheetLine,
  type DraftLine,
  type LineCost,
  type QuoteDraft,
  QuotingInputError,
  type SheetPrice,
} from '@scantling/quoting';
import { z } from 'zod';
import { RequestProblem } from '../../problems/request-problem.ts';
import { findCostSheet } from '../cost-sheets/cost-sheet-records.ts';
import type { CostingRecords } from '../cost-sheets/costing-records.ts';
import type { ChosenDrawing } from '../cost-sheets/design-choice.ts';
import { gatherFrom } from '../cost-sheets/gather-input.ts';

/** What a line's cost sheet was asked, kept so that the same work can be costed again on another day. */
export const sheetAskSchema = z.object({
  costSheetId: z.string(),
  title: z.string(),
  designId: z.string(),
  ...designChoiceFields,
  basis: z.enum(['shop', 'commission']),
  pieces: z.number(),
  terms: costTermsSchema,
  ownValues: ownValuesSchema.default([]),
});
export type SheetAsk = z.output<typeof sheetAskSchema>;

/** A line's cost sheet, worked out at its number of pieces. */
export interface CostedLine {
  readonly lineId: string;
  readonly ask: SheetAsk;
  readonly sheet: CostSheet;
  readonly column: CostColumn;
  readonly price: SheetPrice;
  readonly cost: LineCost;
}

/** True for what is wrong with the records a sheet rests on, and not with the program. */
export function isOfCosting(error: unknown): error is Error {
  return (
    error instanceof CostingInputError ||
    error instanceof NoAnswerError ||
    error instanceof CurrencyMismatchError ||
    error instanceof NoExchangeRateError ||
    (error instanceof RequestProblem && error.code === 'input-invalid')
  );
}

/** An error of costing, told as one of the quote's line. */
function asLineProblem(error: unknown, at: number, title: string): unknown {
  if (!isOfCosting(error)) return error;
  return new QuotingInputError(
    `lines.${at}.costSheetId`,
    `names "${title}", which cannot be worked out (${error.message})`,
    'mend the cost sheet first',
  );
}

function leaf<U extends 'money' | 'h'>(
  line: { id: string; description: string },
  name: string,
  of: Figure<U>,
  source: Source,
): Figure<U> {
  return input({
    key: `line/${line.id}/${name}`,
    label: `${line.description}: ${of.label}`,
    unit: of.unit,
    value: of.value,
    ...(of.currency === null ? {} : { currency: of.currency }),
    source,
  });
}

/** What one line rests on, from its worked-out sheet. */
export function costedLine(
  line: Pick<CostSheetLine, 'id' | 'description'>,
  ask: SheetAsk,
  sheet: CostSheet,
): CostedLine {
  const [column] = sheet.columns;
  if (column === undefined) throw new RangeError('a cost sheet has a column for each number of pieces');
  const { costSheetId, title, pieces } = ask;
  const source: Source = {
    kind: 'cost-sheet',
    text: `cost sheet "${title}", ${pieces} ${pieces === 1 ? 'piece' : 'pieces'}`,
    record: `cost-sheet:${costSheetId}`,
  };
  const bought = sum(
    'what must be bought',
    'money',
    column.materials.map(({ boughtCost }) => boughtCost),
    sheet.input.currency,
  );
  const ownerLabour = sum(
    'labour of the owner',
    'money',
    column.work.filter(({ isOwner }) => isOwner).map(({ labour }) => labour),
    sheet.input.currency,
  );
  return {
    lineId: line.id,
    ask,
    sheet,
    column,
    price: { costSheetId, title, netPrice: column.price.netPrice.value.toString() },
    cost: {
      cost: leaf(line, 'cost', column.classes.costOfProduction, source),
      bought: leaf(line, 'bought', bought, source),
      owner: {
        hours: leaf(line, 'owner-hours', column.hours.owner, source),
        labour: leaf(line, 'owner-labour', ownerLabour, source),
      },
    },
  };
}

/** The cost sheet of an ask on a day; with the drawing of then where the design's may have changed since. */
export async function costAsk(
  records: CostingRecords,
  ask: SheetAsk & { onDate: string | null },
  kept?: ChosenDrawing,
): Promise<CostSheet> {
  const { pieces, ...asked } = ask;
  return costSheet(await gatherFrom(records, { ...asked, quantities: [pieces] }, kept));
}

async function costOne(records: CostingRecords, line: CostSheetLine, at: number): Promise<CostedLine> {
  const found = await findCostSheet(records.database, line.costSheetId);
  if (found === null)
    throw new QuotingInputError(
      `lines.${at}.costSheetId`,
      'names no cost sheet',
      'choose one of the cost sheets',
    );
  const { title, designId, revision, variant, parameterValues, basis, onDate, terms, ownValues } = found;
  const choice = { designId, revision, variant, parameterValues };
  const ask = { costSheetId: found.id, title, ...choice, basis, pieces: line.pieces, terms, ownValues };
  try {
    return costedLine(line, ask, await costAsk(records, { ...ask, onDate }));
  } catch (error) {
    throw asLineProblem(error, at, title);
  }
}

/**
 * The cost sheets behind a draft's lines, each at its line's number of pieces, as they are on the records' day.
 * @throws QuotingInputError naming the line whose sheet is gone or cannot be worked out
 */
export async function costLines(records: CostingRecords, lines: readonly DraftLine[]): Promise<CostedLine[]> {
  const costed: CostedLine[] = [];
  for (const [at, line] of lines.entries())
    if (line.kind === 'cost-sheet') costed.push(await costOne(records, line, at));
  return costed;
}

/** What we know of every line's cost: from its sheet, or as entered. */
export function lineCosts(draft: QuoteDraft, costed: readonly CostedLine[]): Map<string, LineCost> {
  const costs = new Map<string, LineCost>(costed.map(({ lineId, cost }) => [lineId, cost]));
  const nothing = sum('nothing to buy that a sheet knows of', 'money', [], draft.currency);
  for (const line of draft.lines) {
    if (line.kind === 'cost-sheet') continue;
    const { id, description, cost } = line;
    const entered = input({
      key: `line/${id}/cost`,
      label: `${description}: cost`,
      unit: 'money',
      value: cost ?? '0',
      currency: draft.currency,
      source: { kind: 'entered', text: 'entered in the quote' },
    });
    costs.set(id, { cost: cost === null ? null : entered, bought: nothing });
  }
  return costs;
}
