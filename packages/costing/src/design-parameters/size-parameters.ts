import { type Figure, input, type Source } from '@scantling/figures';
import type { LengthUnit } from '@scantling/units';
import type { BillProblem } from '../bill-of-materials/index.ts';
import type { DrawnDesign } from './drawn-bill.ts';
import { isFormula } from './formula.ts';
import { FormulaError, UnresolvedNameError } from './formula-error.ts';
import { asLength, type FormulaScope, type Measure } from './measure.ts';
import { boundFault, idFault, type Parameter, type ParameterChoice, valueFault } from './parameter.ts';
import { readFormula } from './read-formula.ts';
import { workOutFormula } from './work-out-formula.ts';

/** A parameter with the value it has under a choice. */
export interface SizedParameter {
  readonly parameter: Parameter;
  /** Millimetres, a number, or the code of a material; null where it has a problem. */
  readonly value: string | null;
  /** Null for materials, and where it has a problem. */
  readonly figure: Figure<'mm'> | Figure<'ratio'> | null;
}

/** Where a value comes from: its text, the field that a problem with it is told at, and the leaf's source. */
interface GivenValue {
  readonly text: string;
  readonly field: string;
  readonly source: Source;
}

/** The parameters of a design under a choice; formulas look their names up here. */
export class ParameterValues implements FormulaScope {
  readonly unit: LengthUnit;
  readonly problems: BillProblem[] = [];
  /** True once a bare number was taken as a length. */
  usesUnit = false;
  readonly #parameters: ReadonlyMap<string, { parameter: Parameter; index: number }>;
  readonly #given: ReadonlyMap<string, GivenValue>;
  readonly #known = new Map<string, SizedParameter>();
  readonly #working: string[] = [];

  constructor(design: DrawnDesign, choice: ParameterChoice, unit: LengthUnit) {
    this.unit = unit;
    const parameters = new Map<string, { parameter: Parameter; index: number }>();
    design.parameters.forEach((parameter, index) => {
      const { id } = parameter;
      const fault = parameters.has(id) ? 'stands twice' : idFault(id);
      if (fault !== null)
        this.#tell(
          `parameters.${index}.id`,
          `"${id}" ${fault}`,
          'use letters and digits, such as length or drawers, each once',
        );
      if (!parameters.has(id)) parameters.set(id, { parameter, index });
    });
    this.#parameters = parameters;
    this.#given = this.#chosenValues(design, choice);
  }

  /** Every parameter in the order of the design. */
  all(): SizedParameter[] {
    return [...this.#parameters.keys()].map((id) => this.#sized(id));
  }

  noteBareLength(): void {
    this.usesUnit = true;
  }

  /** The material that a code of the bill means: a parameter's choice, or itself. Null where it has a problem. */
  material(code: string): string | null {
    const found = this.#parameters.get(code);
    return found?.parameter.kind === 'material' ? this.#sized(code).value : code;
  }

  lookUp(name: string): Measure {
    const found = this.#parameters.get(name);
    if (found === undefined)
      throw new FormulaError(`names "${name}", which is no parameter of the design`, this.#namesToUse());
    if (found.parameter.kind === 'material')
      throw new FormulaError(`counts with "${name}", which is a material`, this.#namesToUse());
    const at = this.#working.indexOf(name);
    if (at >= 0)
      throw new FormulaError(
        `goes in a circle: ${[...this.#working.slice(at), name].join(' -> ')}`,
        'give one of them a value of its own',
      );
    const { figure } = this.#sized(name);
    if (figure === null) throw new UnresolvedNameError(name);
    return figure.unit === 'mm'
      ? { kind: 'length', figure }
      : { kind: 'number', figure: figure as Figure<'ratio'>, isBare: false };
  }

  #namesToUse(): string {
    const names = [...this.#parameters.values()]
      .filter(({ parameter }) => parameter.kind !== 'material')
      .map(({ parameter }) => parameter.id);
    return names.length === 0
      ? 'add the parameter first'
      : `add the parameter, or use ${names.slice(0, 12).join(', ')}`;
  }

  #chosenValues(design: DrawnDesign, choice: ParameterChoice): ReadonlyMap<string, GivenValue> {
    const given = new Map<string, GivenValue>();
    const put = (id: string, text: string, field: string, from: string) => {
      const found = this.#parameters.get(id);
      if (found === undefined)
        this.#tell(field, `names "${id}", which is no parameter of the design`, 'leave it out, or add it');
      else if (isFormula(found.parameter.value))
        this.#tell(field, `sets "${id}", which is worked out from others`, 'set what it is worked out from');
      else given.set(id, { text, field, source: { kind: 'entered', text: from } });
    };
    const { variant = null, values = {} } = choice;
    if (variant !== null) {
      const at = design.variants.findIndex(({ id }) => id === variant);
      const found = design.variants[at];
      if (found === undefined)
        this.#tell(
          'variant',
          `names "${variant}", which is no variant of the design`,
          'choose another, or none',
        );
      else
        for (const [id, text] of Object.entries(found.values))
          put(id, text, `variants.${at}.values.${id}`, `variant ${found.name} of the design`);
    }
    for (const [id, text] of Object.entries(values))
      put(id, text, `parameterValues.${id}`, 'chosen on this cost sheet');
    return given;
  }

  #sized(id: string): SizedParameter {
    const known = this.#known.get(id);
    if (known) return known;
    const found = this.#parameters.get(id);
    if (found === undefined) throw new RangeError(`no parameter ${id}`);
    const sized = this.#size(found.parameter, found.index);
    this.#known.set(id, sized);
    return sized;
  }

  #size(parameter: Parameter, index: number): SizedParameter {
    const { id, label, kind, value } = parameter;
    const nothing: SizedParameter = { parameter, value: null, figure: null };
    if (isFormula(value)) return this.#workedOut(parameter, value.formula, `parameters.${index}.value`);
    const { text, field, source } = this.#given.get(id) ?? {
      text: value,
      field: `parameters.${index}.value`,
      source: { kind: 'bill-of-materials', text: 'parameter of the design' } as const,
    };
    const fault = valueFault(parameter, text, this.unit);
    if (fault !== null) {
      this.#tell(field, fault.message, fault.mend);
      return nothing;
    }
    if (kind === 'material') return { parameter, value: text, figure: null };
    const leaf = { key: `parameter/${id}`, label, value: text, source };
    const figure =
      kind === 'length'
        ? input({ ...leaf, unit: 'mm' as const })
        : input({ ...leaf, unit: 'ratio' as const });
    return { parameter, value: figure.value.toString(), figure };
  }

  #workedOut(parameter: Parameter, formula: string, field: string): SizedParameter {
    const { id, kind, label } = parameter;
    const nothing: SizedParameter = { parameter, value: null, figure: null };
    if (kind === 'material') {
      this.#tell(field, 'is a formula, and a material is none', 'choose a material');
      return nothing;
    }
    this.#working.push(id);
    try {
      const measure = this.workOut(formula, kind === 'length' ? 'length' : 'number');
      const fault = boundFault(parameter, measure.value, this.unit);
      if (fault === null) {
        const figure = { ...titled(label, measure), note: formula };
        return { parameter, value: figure.value.toString(), figure };
      }
      this.#tell(field, fault.message, fault.mend);
      return nothing;
    } catch (error) {
      if (!(error instanceof FormulaError)) throw error;
      if (!(error instanceof UnresolvedNameError)) this.#tell(field, error.reason, error.mend);
      return nothing;
    } finally {
      this.#working.pop();
    }
  }

  /** Works a formula out as what its field takes. @throws FormulaError */
  workOut(formula: string, wanted: 'length' | 'number'): Figure<'mm'> | Figure<'ratio'> {
    const measure = workOutFormula(readFormula(formula), this);
    if (measure.kind === wanted) return measure.figure;
    if (measure.kind === 'length')
      throw new FormulaError('comes to a length where a number is wanted', 'divide it by a length');
    if (!measure.isBare)
      throw new FormulaError(
        'comes to a number where a length is wanted',
        'multiply it by a length, or use mm(...) or in(...)',
      );
    this.noteBareLength();
    return asLength(measure.figure, this.unit);
  }

  #tell(field: string, message: string, mend: string): void {
    this.problems.push({ field, message, mend });
  }
}

/** A figure under the label of the field it fills; one that is a leaf or another field's stays what it is. */
export function titled(
  label: string,
  figure: Figure<'mm'> | Figure<'ratio'>,
): Figure<'mm'> | Figure<'ratio'> {
  const how = { kind: 'same', inputs: [figure] } as const;
  return figure.how.kind === 'input' || figure.note !== undefined
    ? { ...figure, label, how }
    : { ...figure, label };
}
