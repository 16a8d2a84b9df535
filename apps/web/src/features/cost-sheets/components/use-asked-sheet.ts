import { resultIds, type SheetResultName, type WorkedCostSheet } from '@scantling/contracts';
import { type FigureNode, type FigureTable, UnknownFigureError } from '@scantling/figures';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { type CostSheetRecord, costSheetQuery } from '../api/get-cost-sheet.ts';
import { workedCostSheetQuery } from '../api/work-out-cost-sheet.ts';

export interface AskedResult {
  readonly name: SheetResultName;
  readonly id: string;
}

/** A sheet that is asked something: which of its results, at which number of pieces. */
export interface AskedSheet {
  readonly sheet: CostSheetRecord;
  readonly etag: string | null;
  readonly worked: WorkedCostSheet;
  readonly column: WorkedCostSheet['columns'][number];
  readonly results: readonly AskedResult[];
  readonly result: AskedResult;
  /** The result as it stands. */
  readonly now: FigureNode;
}

export interface AskedSheetQuery {
  readonly sheetId: string;
  readonly title: string;
  readonly asked: AskedSheet | null;
  readonly error: unknown;
  readonly retry: () => void;
}

function askedOf(
  { value: sheet, etag }: { readonly value: CostSheetRecord; readonly etag: string | null },
  worked: WorkedCostSheet,
  search: { readonly result?: string; readonly pieces?: string },
): AskedSheet | null {
  const column =
    worked.columns.find(({ quantity }) => String(quantity) === search.pieces) ?? worked.columns[0];
  if (column === undefined) return null;
  const results = resultIds(column);
  const result = results.find(({ name }) => name === search.result) ?? results[0];
  if (result === undefined) return null;
  return { sheet, etag, worked, column, results, result, now: figureOf(worked.figures, result.id) };
}

/** @throws UnknownFigureError */
export function figureOf(table: FigureTable, id: string): FigureNode {
  const node = table[id];
  if (node === undefined) throw new UnknownFigureError(id);
  return node;
}

/** The sheet of this address with its figures, and which of them is asked about. */
export function useAskedSheet(search: {
  readonly result?: string;
  readonly pieces?: string;
}): AskedSheetQuery {
  const { sheetId = '' } = useParams({ strict: false });
  const sheet = useQuery(costSheetQuery(sheetId));
  const worked = useQuery(workedCostSheetQuery(sheetId));
  const failed = [sheet, worked].find(({ isError }) => isError);
  return {
    sheetId,
    title: sheet.data?.value.title ?? 'Cost sheet',
    asked:
      sheet.data === undefined || worked.data === undefined ? null : askedOf(sheet.data, worked.data, search),
    error: failed?.error ?? null,
    retry: () => void failed?.refetch(),
  };
}
