import type { Bill } from './bill.ts';

/** What is wrong with one row of a bill, and what to do. */
export interface BillProblem {
  /** Path into the bill: "parts.3.material". */
  readonly field: string;
  readonly message: string;
  readonly mend: string;
}

/** Codes that a bill may name. Families count as materials. */
export interface KnownCodes {
  readonly materials: ReadonlySet<string>;
  readonly grades: ReadonlySet<string>;
  readonly machines: ReadonlySet<string>;
}

/** Everything in the bill that names something which is not there, and every id that stands twice. */
export function checkBill(bill: Bill, known: KnownCodes): BillProblem[] {
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
          field: `${kind}.${index}.id`,
          message: `"${row.id}" stands twice`,
          mend: 'give each row its own id',
        });
      }
      seen.add(row.id);
      if ('assembly' in row) need(`${kind}.${index}.assembly`, row.assembly, assemblies, 'assembly');
      if ('material' in row) need(`${kind}.${index}.material`, row.material, known.materials, 'material');
    });
  }
  bill.parts.forEach((part, index) => {
    need(`parts.${index}.edgeBand.material`, part.edgeBand?.material, known.materials, 'material');
    need(`parts.${index}.veneer.material`, part.veneer?.material, known.materials, 'material');
  });
  bill.finishes.forEach((step, index) => {
    step.parts.forEach((id, at) => {
      need(`finishes.${index}.parts.${at}`, id, parts, 'part');
    });
  });
  bill.operations.forEach((operation, index) => {
    need(`operations.${index}.grade`, operation.grade, known.grades, 'labour grade');
    need(`operations.${index}.machine`, operation.machine, known.machines, 'machine');
  });
  return problems;
}
