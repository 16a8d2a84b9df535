import { COSTING_BASES, costDifference, costSheet } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { rowId } from '../designs/bill.ts';
import { figureTableSchema, workingQuery } from '../figures.ts';
import { calendarDate, recordId, recordParams } from '../record.ts';
import { comparedColumn, costDifferenceSchema, toCostDifference } from './cost-difference.ts';
import { exampleCostSheet } from './cost-sheet.ts';
import { exampleSheetInput } from './example-sheet-input.ts';
import { toWorkedCostSheet } from './worked-cost-sheet.ts';

const comparedSheetSchema = z.strictObject({
  costSheetId: recordId,
  title: z.string(),
  designId: recordId,
  designName: z.string(),
  revision: z.number().int(),
  /** Name of the variant; null: as drawn. */
  variant: z.string().nullable(),
  onDate: calendarDate,
  basis: z.enum(COSTING_BASES),
  /** False where a material has no price, so that cost and price are too low. */
  isComplete: z.boolean(),
});

const wholeNumber = (least: number, most: number) =>
  z
    .string()
    .regex(/^\d{1,6}$/)
    .transform(Number)
    .pipe(z.number().int().min(least).max(most));

export const compareCostSheets = defineContract({
  name: 'compare-cost-sheets',
  method: 'GET',
  path: '/api/cost-sheets/:id/comparison',
  summary: 'Compare a cost sheet with another, or with itself otherwise',
  description:
    'Why the one costs another amount than the other, leaf by leaf, grouped by cause, with what each moves cost and net ' +
    'price by; the causes add up to the difference exactly. The other is the sheet `with` (this one where it is left out), ' +
    'on another date, on another basis, in another variant or revision where that is given. Both are worked out at the same number of ' +
    'pieces. Nothing is stored.',
  tag: 'cost-sheets',
  roles: 'anyone',
  params: recordParams,
  query: workingQuery.extend({
    with: recordId.exactOptional(),
    onDate: calendarDate.exactOptional(),
    basis: z.enum(COSTING_BASES).exactOptional(),
    variant: rowId
      .exactOptional()
      .meta({ description: 'Id of a variant of its design, with its own values' }),
    asDrawn: z
      .literal('true')
      .exactOptional()
      .meta({ description: 'Without the variant and the values of parameters it has' }),
    revision: wholeNumber(1, 999_999).exactOptional(),
    pieces: wholeNumber(1, 2000)
      .exactOptional()
      .meta({ description: "The first of the sheet's numbers of pieces where it is left out" }),
  }),
  answer: z.strictObject({
    pieces: z.number().int(),
    was: comparedSheetSchema,
    now: comparedSheetSchema,
    difference: costDifferenceSchema,
    figures: figureTableSchema,
  }),
  example: {
    params: { id: exampleCostSheet.id },
    query: { onDate: '2026-05-01' },
    answer: exampleComparison(),
  },
});

/** The example's sheet beside itself with a dearer board. */
function exampleComparison() {
  const worked = (amount: string) =>
    toWorkedCostSheet(
      costSheet({
        ...exampleSheetInput,
        materials: exampleSheetInput.materials.map((material) => ({
          ...material,
          offers: material.offers.map((offer) => ({ ...offer, breaks: [{ from: '0', amount }] })),
        })),
      }),
      { withDerivations: true },
    );
  const table = new FigureTableBuilder({ withDerivations: false });
  const found = costDifference(comparedColumn(worked('1450')), comparedColumn(worked('1520')));
  const side = {
    costSheetId: exampleCostSheet.id,
    title: exampleCostSheet.title,
    designId: exampleCostSheet.designId,
    designName: exampleCostSheet.designName,
    revision: 3,
    variant: 'Long',
    basis: 'shop' as const,
    isComplete: true,
  };
  return {
    pieces: 1,
    was: { ...side, onDate: '2026-03-01' },
    now: { ...side, onDate: '2026-05-01' },
    difference: toCostDifference(found, table),
    figures: table.table(),
  };
}
