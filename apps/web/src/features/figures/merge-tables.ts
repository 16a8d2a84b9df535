import type { FigureNode, FigureTable } from '@scantling/figures';

/** The id a figure of one of several tables has in the merged one. */
export function mergedId(of: string, id: string): string {
  return `${of}:${id}`;
}

function renamed(of: string, node: FigureNode): FigureNode {
  const id = mergedId(of, node.id);
  if (node.how === undefined) return { ...node, id };
  return { ...node, id, how: { ...node.how, inputs: node.how.inputs.map((input) => mergedId(of, input)) } };
}

/** Tables of several answers as one, for a sheet that shows figures of all of them beside one rail. */
export function mergeTables(tables: Readonly<Record<string, FigureTable | undefined>>): FigureTable {
  return Object.fromEntries(
    Object.entries(tables).flatMap(([of, table]) =>
      Object.entries(table ?? {}).map(
        ([id, node]) => [mergedId(of, id), renamed(of, { ...node, id })] as const,
      ),
    ),
  );
}
