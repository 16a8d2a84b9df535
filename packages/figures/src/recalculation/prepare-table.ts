import { type Decimal, decimal } from '@scantling/decimals';
import { OPERATIONS, type OperationName } from '../operations/index.ts';
import type { Settings } from '../operations/operation.ts';
import type { FigureNode, FigureTable } from '../table.ts';
import { FigureTableError, UnknownFigureError } from './figure-errors.ts';

/** A figure of a prepared table; figures are named by their place, inputs before what rests on them. */
export interface PreparedFigure {
  readonly node: FigureNode;
  /** Set where it is derived. */
  readonly operation: OperationName | null;
  readonly inputs: readonly number[];
  readonly settings: Settings;
  /** The figures that rest on it at once. */
  readonly dependents: readonly number[];
  /** What a figure that is not derived was given. */
  readonly given: Decimal | null;
}

/** A table of figures in the order in which it can be worked out. */
export interface PreparedTable {
  readonly figures: readonly PreparedFigure[];
  /** @throws UnknownFigureError */
  place(id: string): number;
  /** The place of a leaf, which may take another value. @throws UnknownFigureError */
  leafPlace(id: string): number;
}

const NO_SETTINGS: Settings = {};

function checkDerivation(node: FigureNode): OperationName | null {
  if (node.how === undefined) return null;
  const { operation, inputs, settings = NO_SETTINGS } = node.how;
  if (!Object.hasOwn(OPERATIONS, operation))
    throw new FigureTableError(node.id, `is derived by "${operation}", which is no operation`);
  const known = OPERATIONS[operation];
  const [least, most] = known.inputs;
  if (inputs.length < least || inputs.length > most)
    throw new FigureTableError(node.id, `gives "${operation}" ${inputs.length} inputs, which it cannot take`);
  const fault = 'settingsFault' in known ? known.settingsFault?.(settings, inputs.length) : undefined;
  if (fault !== undefined) throw new FigureTableError(node.id, fault);
  return operation;
}

/** Inputs before what rests on them, without recursion: a chain may be longer than the stack. */
function inOrder(nodes: readonly FigureNode[], inputsOf: readonly (readonly number[])[]): number[] {
  const restingOn: number[][] = nodes.map(() => []);
  const open = inputsOf.map((inputs, at) => {
    for (const input of inputs) restingOn[input]?.push(at);
    return inputs.length;
  });
  const ready = open.flatMap((count, at) => (count === 0 ? [at] : []));
  for (let next = 0; next < ready.length; next += 1) {
    for (const dependent of restingOn[ready[next] ?? -1] ?? []) {
      const left = (open[dependent] ?? 0) - 1;
      open[dependent] = left;
      if (left === 0) ready.push(dependent);
    }
  }
  if (ready.length === nodes.length) return ready;
  const stuck = nodes.find((_, at) => (open[at] ?? 0) > 0);
  throw new FigureTableError(stuck?.id ?? '', 'rests on itself, or on one that does');
}

/**
 * Checks a table and puts it in order, once for any number of changes.
 * @throws UnknownFigureError where an input is missing, FigureTableError where a figure rests on itself or its
 * derivation is none, NotADecimalError
 */
export function prepareTable(table: FigureTable): PreparedTable {
  const nodes = Object.entries(table).map(([id, node]) => {
    if (node.id !== id) throw new FigureTableError(id, `is called "${node.id}" as well`);
    return node;
  });
  const rows = new Map(nodes.map(({ id }, at) => [id, at]));
  const rowOf = (id: string): number => {
    const row = rows.get(id);
    if (row === undefined) throw new UnknownFigureError(id);
    return row;
  };
  const operations = nodes.map(checkDerivation);
  const order = inOrder(
    nodes,
    nodes.map((node) => node.how?.inputs.map(rowOf) ?? []),
  );
  const places = new Map(order.map((row, place) => [nodes[row]?.id ?? '', place]));
  const place = (id: string): number => {
    const found = places.get(id);
    if (found === undefined) throw new UnknownFigureError(id);
    return found;
  };
  const dependents: number[][] = nodes.map(() => []);
  const figures = order.flatMap((row, own): PreparedFigure[] => {
    const node = nodes[row];
    if (node === undefined) return [];
    const inputs = node.how?.inputs.map(place) ?? [];
    for (const input of new Set(inputs)) dependents[input]?.push(own);
    const operation = operations[row] ?? null;
    const given = operation === null ? decimal(node.value) : null;
    return [
      {
        node,
        operation,
        inputs,
        settings: node.how?.settings ?? NO_SETTINGS,
        dependents: dependents[own] ?? [],
        given,
      },
    ];
  });
  const leafPlace = (id: string): number => {
    const found = place(id);
    const figure = figures[found];
    if (figure?.operation !== null || figure.node.source === undefined) throw new UnknownFigureError(id);
    return found;
  };
  return { figures, place, leafPlace };
}
