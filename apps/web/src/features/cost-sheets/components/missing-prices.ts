import type { WorkedCostSheet } from '@scantling/contracts';

/** Names of the materials that no number of pieces has a price for, each once. */
export function missingIn({ columns }: Pick<WorkedCostSheet, 'columns'>): readonly string[] {
  const byCode = new Map(columns.flatMap(({ unpriced }) => unpriced).map(({ code, name }) => [code, name]));
  return [...byCode.values()];
}

/** "2 materials have no price: Oak 4/4, Screws"; nothing where all have one. */
export function missingWords(missing: readonly string[]): string {
  if (missing.length === 0) return '';
  const count = missing.length === 1 ? '1 material has' : `${missing.length} materials have`;
  return `${count} no price: ${missing.join(', ')}`;
}
