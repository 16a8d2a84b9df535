import type { Figure } from '@scantling/figures';
import type { LengthUnit } from '@scantling/units';
import type { Bill, BillProblem } from '../bill-of-materials/index.ts';
import { CostingInputError } from '../input-error.ts';
import { BillSizer } from './bill-sizer.ts';
import type { DrawnBill, DrawnDesign } from './drawn-bill.ts';
import type { ParameterChoice } from './parameter.ts';
import { ParameterValues, type SizedParameter } from './size-parameters.ts';
import { type KeptRows, sizeRows } from './size-rows.ts';

/** A design with everything chosen: an ordinary bill, and the figures its formulas came to. */
export interface SizedDesign {
  /** Null while there are problems. */
  readonly bill: Bill | null;
  readonly parameters: readonly SizedParameter[];
  /** Figures of the bill's worked-out fields, by the key of the cost sheet's leaf ("part seat/length"). */
  readonly figures: ReadonlyMap<string, Figure>;
  /** The same by their path into the design ("bill.parts.3.length"). */
  readonly fields: ReadonlyMap<string, Figure>;
  /** Which rows of the drawn bill are in the bill: those with a quantity of 0 are not. */
  readonly kept: KeptRows;
  /** Every problem, with its path into the design ("parameters.2.value", "bill.parts.3.length"). */
  readonly problems: readonly BillProblem[];
  /** True where a bare number of a formula is a length, so that the design's unit matters. */
  readonly usesUnit: boolean;
}

/**
 * Works out a drawn design under a choice. A row whose quantity comes to 0 is left out, and what belongs to a
 * left-out assembly with it.
 * @param unit what a bare number of a formula means as a length
 */
export function sizeDesign(design: DrawnDesign, choice: ParameterChoice, unit: LengthUnit): SizedDesign {
  const values = new ParameterValues(design, choice, unit);
  const parameters = values.all();
  const sizer = new BillSizer(values);
  const { bill, kept } = sizeRows(design.bill, sizer);
  const problems = [...values.problems, ...sizer.problems];
  return {
    bill: problems.length === 0 ? bill : null,
    parameters,
    figures: sizer.figures,
    fields: sizer.fields,
    kept,
    problems,
    usesUnit: values.usesUnit,
  };
}

/** The design under the choice. @throws CostingInputError for the first problem */
export function requireSized(
  design: DrawnDesign,
  choice: ParameterChoice,
  unit: LengthUnit,
): SizedDesign & { readonly bill: Bill } {
  const sized = sizeDesign(design, choice, unit);
  const [problem] = sized.problems;
  if (problem !== undefined) throw new CostingInputError(problem.field, problem.message, problem.mend);
  const { bill } = sized;
  if (bill === null) throw new RangeError('a design without a problem has no bill');
  return { ...sized, bill };
}

/** The field of the drawn bill that a field of the sized bill stands for. */
export function drawnField(field: string, kept: KeptRows): string {
  const [, kind, row, rest = ''] = /^bill\.([a-z]+)\.(\d+)(.*)$/.exec(field) ?? [];
  if (kind === undefined || !(kind in kept)) return field;
  const drawn = kept[kind as keyof DrawnBill][Number(row)];
  return drawn === undefined ? field : `bill.${kind}.${drawn}${rest}`;
}

/** Everything wrong with a design, as drawn and in each of its variants. */
export function checkDesign(design: DrawnDesign, unit: LengthUnit): BillProblem[] {
  const asDrawn = sizeDesign(design, {}, unit).problems;
  const told = new Set(asDrawn.map(({ field }) => field));
  const inVariants = design.variants.flatMap((variant, index) => {
    const isTwice = design.variants.findIndex(({ id }) => id === variant.id) !== index;
    const twice = {
      field: `variants.${index}.id`,
      message: `"${variant.id}" stands twice`,
      mend: 'give each variant its own id',
    };
    const { problems } = sizeDesign(design, { variant: variant.id }, unit);
    return [
      ...(isTwice ? [twice] : []),
      ...problems
        .filter(({ field }) => !told.has(field))
        .map((problem) => ({ ...problem, message: `${problem.message} (variant ${variant.name})` })),
    ];
  });
  return [...asDrawn, ...inVariants];
}
