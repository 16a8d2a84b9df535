import type { DrawnDesign } from './drawn-bill.ts';
import { isFormula } from './formula.ts';

/** Codes of all materials and families that a design names, as drawn, in a variant or among its choices. */
export function materialCodesIn({ bill, parameters, variants }: DrawnDesign): string[] {
  const choosable = parameters.filter(({ kind }) => kind === 'material');
  const ids = new Set(choosable.map(({ id }) => id));
  const named = [
    ...bill.parts.flatMap((part) => [part.material, part.edgeBand?.material, part.veneer?.material]),
    ...[...bill.components, ...bill.finishes, ...bill.consumables].map((row) => row.material),
  ].filter((code) => code !== undefined && !ids.has(code));
  const chosen = choosable.flatMap(({ id, value, choices = [] }) => [
    isFormula(value) ? undefined : value,
    ...choices,
    ...variants.map(({ values }) => values[id]),
  ]);
  return [...new Set([...named, ...chosen].filter((code) => code !== undefined))];
}
