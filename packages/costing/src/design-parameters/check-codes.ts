import type { BillProblem } from '../bill-of-materials/index.ts';
import type { DrawnDesign } from './drawn-bill.ts';
import { isFormula } from './formula.ts';

/** Codes that a design may name. Families count as materials. */
export interface KnownCodes {
  readonly materials: ReadonlySet<string>;
  readonly grades: ReadonlySet<string>;
  readonly machines: ReadonlySet<string>;
}

/**
 * Everything in a design that names something which is not there, and every id that stands twice. A material may
 * also be named by a parameter.
 */
export function checkCodes(design: DrawnDesign, known: KnownCodes): BillProblem[] {
  const { bill, parameters, variants } = design;
  const choosable = parameters.filter(({ kind }) => kind === 'material');
  const materials = new Set([...known.materials, ...choosable.map(({ id }) => id)]);
  const problems: BillProblem[] = [];
  const assemblies = new Set(bill.assemblies.map((assembly) => assembly.id));
  const parts = new Set(bill.parts.map((part) => part.id));
  const need = (field: string, code: string | undefined, among: ReadonlySet<string>, what: string) => {
    if (code === undefined || among.has(code)) return;
    problems.push({
      field,
      message: `there is no ${what} "${code}"`,
      mend: `enter the ${what} first, or correct the code`,
    });
  };
  for (const kind of [
    'assemblies',
    'parts',
    'components',
    'finishes',
    'consumables',
    'operations',
  ] as const) {
    const seen = new Set<string>();
    bill[kind].forEach((row, index) => {
      if (seen.has(row.id)) {
        problems.push({
          field: `bill.${kind}.${index}.id`,
          message: `"${row.id}" stands twice`,
          mend: 'give each row its own id',
        });
      }
      seen.add(row.id);
      if ('assembly' in row) need(`bill.${kind}.${index}.assembly`, row.assembly, assemblies, 'assembly');
      if ('material' in row) need(`bill.${kind}.${index}.material`, row.material, materials, 'material');
    });
  }
  bill.parts.forEach((part, index) => {
    need(`bill.parts.${index}.edgeBand.material`, part.edgeBand?.material, materials, 'material');
    need(`bill.parts.${index}.veneer.material`, part.veneer?.material, materials, 'material');
  });
  bill.finishes.forEach((step, index) => {
    step.parts.forEach((id, at) => {
      need(`bill.finishes.${index}.parts.${at}`, id, parts, 'part');
    });
  });
  bill.operations.forEach((operation, index) => {
    need(`bill.operations.${index}.grade`, operation.grade, known.grades, 'labour grade');
    need(`bill.operations.${index}.machine`, operation.machine, known.machines, 'machine');
  });
  parameters.forEach(({ id, kind, value, choices = [] }, index) => {
    if (kind !== 'material') return;
    if (known.materials.has(id))
      problems.push({
        field: `parameters.${index}.id`,
        message: `"${id}" is also the code of a material`,
        mend: 'give the parameter another id',
      });
    if (!isFormula(value)) need(`parameters.${index}.value`, value, known.materials, 'material');
    choices.forEach((code, at) => {
      need(`parameters.${index}.choices.${at}`, code, known.materials, 'material');
    });
    variants.forEach(({ values }, at) => {
      need(`variants.${at}.values.${id}`, values[id], known.materials, 'material');
    });
  });
  return problems;
}
