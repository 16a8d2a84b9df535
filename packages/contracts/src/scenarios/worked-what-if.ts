import { type FigureTable, tryValues } from '@scantling/figures';
import { z } from 'zod';
import type { WorkedCostSheet } from '../cost-sheets/worked-cost-sheet.ts';
import { currencySchema, figureTableSchema } from '../figures.ts';
import { leafKey } from '../own-values/own-value.ts';
import { calendarDate } from '../record.ts';
import { sheetResultSchema, triedResults, workedAmount } from './sheet-results.ts';

/** What a cost sheet would come to with other values; supplier, stock and revision chosen stay as they are. */
export const workedWhatIfSchema = z
  .strictObject({
    currency: currencySchema,
    onDate: calendarDate,
    columns: z.array(z.strictObject({ quantity: z.number().int(), results: z.array(sheetResultSchema) })),
    changed: z.array(
      z.strictObject({ leaf: leafKey, label: z.string(), was: workedAmount, now: workedAmount }),
    ),
    /** Leaves that the sheet does not rest on any more. */
    gone: z.array(leafKey),
    figures: figureTableSchema.meta({
      description: 'As tried: the results; with `working=true` everything below them',
    }),
  })
  .meta({ id: 'WorkedWhatIf' });
export type WorkedWhatIf = z.output<typeof workedWhatIfSchema>;

/** Only the figures named, without how they came about. */
function bare(table: FigureTable, ids: readonly string[]): FigureTable {
  return Object.fromEntries(
    ids.flatMap((id) => {
      const node = table[id];
      if (node === undefined) return [];
      const { how: _how, ...rest } = node;
      return [[id, rest] as const];
    }),
  );
}

/**
 * The answer for a sheet that was worked out with its derivations.
 * @param changes values by the key of the leaf
 * @throws NoAnswerError where the values leave no answer
 */
export function toWhatIf(
  worked: WorkedCostSheet,
  changes: Readonly<Record<string, string>>,
  options: { withDerivations: boolean },
): WorkedWhatIf {
  const tried = tryValues(worked.figures, changes);
  const columns = worked.columns.map((column) => ({
    quantity: column.quantity,
    results: triedResults(column, tried),
  }));
  const shown = columns.flatMap(({ results }) => results.map(({ figure }) => figure));
  return {
    currency: worked.currency,
    onDate: worked.onDate,
    columns,
    changed: tried.changed.map(({ id, label, value }) => ({
      leaf: id,
      label,
      was: value,
      now: tried.table[id]?.value ?? value,
    })),
    gone: [...tried.gone],
    figures: options.withDerivations ? tried.table : bare(tried.table, shown),
  };
}
