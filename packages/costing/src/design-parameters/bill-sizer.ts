import { type Figure, round } from '@scantling/figures';
import { LENGTH_PLACES } from '@scantling/units';
import type { BillProblem } from '../bill-of-materials/index.ts';
import { type Formula, isFormula } from './formula.ts';
import { FormulaError, UnresolvedNameError } from './formula-error.ts';
import { lengthIn } from './length-in.ts';
import { type ParameterValues, titled } from './size-parameters.ts';

/** A field of a bill: where it stands, and what the cost sheet calls its leaf. */
export interface BillField {
  /** Path into the design: "bill.parts.3.length". */
  readonly path: string;
  /** Key of the leaf the cost sheet makes of it: "part seat/length". */
  readonly key: string;
  readonly label: string;
}

/** Least a number may be; "above 0" where 0 is too little. */
type Least = 'above 0' | 0 | 1;
const MOST = 1_000_000_000;

/** Fills the fields of a bill from its formulas, keeping every problem instead of stopping at the first. */
export class BillSizer {
  readonly problems: BillProblem[] = [];
  /** Figures of the fields that have a formula, by the key of the leaf they stand in for. */
  readonly figures = new Map<string, Figure>();
  /** The same by path into the design. */
  readonly fields = new Map<string, Figure>();
  readonly #values: ParameterValues;

  constructor(values: ParameterValues) {
    this.#values = values;
  }

  /** Millimetres as decimal text. */
  length(field: BillField, value: string | Formula, least: Least): string {
    if (!isFormula(value)) return value;
    return this.#work(field, value.formula, 'length', least)?.value.toString() ?? '1';
  }

  /** A number as decimal text. */
  amount(field: BillField, value: string | Formula, least: Least): string {
    if (!isFormula(value)) return value;
    return this.#work(field, value.formula, 'number', least)?.value.toString() ?? '1';
  }

  /** A whole number. */
  count(field: BillField, value: number | Formula, least: 0 | 1): number {
    if (!isFormula(value)) return value;
    const worked = this.#work(field, value.formula, 'number', least);
    if (worked === null) return 1;
    if (worked.value.isInteger() && worked.value.lte(10_000)) return worked.value.toNumber();
    this.#tell(
      field.path,
      `comes to ${worked.value.toString()}, where a whole number of at most 10000 is wanted`,
      'round it with floor(...), ceil(...) or round(...)',
    );
    return 1;
  }

  /** The code of the material meant. */
  material(code: string): string {
    return this.#values.material(code) ?? code;
  }

  #work(field: BillField, formula: string, wanted: 'length' | 'number', least: Least): Figure | null {
    try {
      const worked = titled(field.label, this.#values.workOut(formula, wanted));
      const { value } = worked;
      if (least === 'above 0' ? value.lte(0) : value.lt(least) || value.gt(MOST)) {
        this.#tell(
          field.path,
          `comes to ${wanted === 'length' ? lengthIn(this.#values.unit, value) : value.toString()}, where ${least === 'above 0' ? 'more than 0' : `at least ${least}`} is wanted`,
          'correct the formula, or the parameters it rests on',
        );
        return null;
      }
      const isLong = worked.unit === 'mm' && value.decimalPlaces() > LENGTH_PLACES;
      const figure: Figure = {
        ...(isLong ? round<'mm' | 'ratio'>(field.label, worked, LENGTH_PLACES) : worked),
        note: formula,
      };
      this.figures.set(field.key, figure);
      this.fields.set(field.path, figure);
      return figure;
    } catch (error) {
      if (!(error instanceof FormulaError)) throw error;
      // A parameter with a problem tells it itself.
      if (!(error instanceof UnresolvedNameError)) this.#tell(field.path, error.reason, error.mend);
      return null;
    }
  }

  #tell(field: string, message: string, mend: string): void {
    this.problems.push({ field, message, mend });
  }
}
