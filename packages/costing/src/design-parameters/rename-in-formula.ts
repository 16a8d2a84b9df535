/**
 * A formula with ids of parameters written as others; everything else stays as it was typed. All at once, so that two
 * that change names with each other do not become one.
 */
export function renameInFormula(formula: string, names: ReadonlyMap<string, string>): string {
  // A name begins where no letter, digit or point stands before it: "2e5" names nothing.
  return formula.replace(/(?<![\w.])[A-Za-z_]\w*/g, (name) => names.get(name) ?? name);
}
