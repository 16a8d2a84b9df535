import { type Figure, isInput } from './figure.ts';

/** Every figure the given ones rest on, each once, inputs before what is derived from them. */
export function walk(roots: readonly Figure[]): Figure[] {
  const seen = new Set<Figure>();
  const ordered: Figure[] = [];
  const visit = (figure: Figure): void => {
    if (seen.has(figure)) return;
    seen.add(figure);
    if (figure.how.kind !== 'input') for (const inner of figure.how.inputs) visit(inner);
    ordered.push(figure);
  };
  for (const root of roots) visit(root);
  return ordered;
}

/** The leaves the given figures rest on, each once. */
export function leaves(roots: readonly Figure[]): Figure[] {
  return walk(roots).filter(isInput);
}
