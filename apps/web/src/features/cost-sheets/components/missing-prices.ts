interface Column {
  readonly unpriced: readonly { readonly code: string; readonly name: string }[];
}

/** Names of the materials that no number of pieces has a price for, each once. */
export function missingIn({ columns }: { readonly columns: readonly Column[] }): readonly string[] {
  const byCode = new Map(columns.flatMap(({ unpriced }) => unpriced).map(({ code, name }) => [code, name]));
  return [...byCode.values()];
}

/** "2 materials have no price: Oak 4/4, Screws"; nothing where all have one. */
export function missingWords(missing: readonly string[]): string {
  if (missing.length === 0) return '';
  const count = missing.length === 1 ? '1 material has' : `${missing.length} materials have`;
  return `${count} no price: ${missing.join(', ')}`;
}
