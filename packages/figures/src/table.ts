import type { Currency } from '@scantling/money';
import type { Unit } from '@scantling/units';
import type { Figure, LeafBounds } from './figure.ts';
import type { OperationName } from './operations/index.ts';
import type { Source } from './source.ts';

/** A figure as it travels: value as decimal text, inputs by id. */
export interface FigureNode {
  readonly id: string;
  readonly label: string;
  readonly unit: Unit;
  readonly currency: Currency | null;
  readonly value: string;
  readonly note?: string;
  /** The operation and its inputs' ids; absent on leaves and where derivations were not asked for. */
  readonly how?: {
    readonly operation: OperationName;
    readonly inputs: readonly string[];
    readonly settings?: Readonly<Record<string, string>>;
  };
  /** Where a leaf came from. */
  readonly source?: Source;
  /** Which values a leaf can take, where that is known. */
  readonly bounds?: LeafBounds;
}

/** Figures by id; a shared input stands once. `Id` positions in the rest of an answer point in here. */
export type FigureTable = Readonly<Record<string, FigureNode>>;

/** Thrown when two different leaves claim one key; the answer could not be compared with another day's. */
export class LeafClashError extends Error {
  readonly code = 'leaf-clash';
  constructor(readonly key: string) {
    super(`two different values are both called "${key}"`);
    this.name = 'LeafClashError';
  }
}

/** A figure added by name, with how many derived ones were met below it so far. */
interface Root {
  readonly name: string;
  below: number;
}

/**
 * Collects figures into one table of nodes. Ids are stable for the same input: a leaf's is its key, a derived
 * figure's the name under which it was added, or that name and the place at which it was met below it.
 */
export class FigureTableBuilder {
  readonly #ids = new Map<Figure, string>();
  // Without a prototype no key of a leaf can mean one of its members.
  readonly #nodes: Record<string, FigureNode> = Object.create(null);
  readonly #withDerivations: boolean;

  constructor(options: { withDerivations: boolean }) {
    this.#withDerivations = options.withDerivations;
  }

  /** Adds a figure (with all it rests on, where derivations are asked for) and answers its id. */
  add(name: string, figure: Figure): string {
    return this.#ids.get(figure) ?? this.#addNew(name, { name, below: 0 }, figure);
  }

  #addNew(name: string, root: Root, figure: Figure): string {
    const { how, label, unit, currency, note } = figure;
    const value = figure.value.toString();
    if (how.kind === 'input') {
      const id = how.key;
      const known = this.#nodes[id];
      if (known !== undefined && known.value !== value) throw new LeafClashError(id);
      this.#ids.set(figure, id);
      const { source, bounds } = how;
      const node: FigureNode =
        note === undefined
          ? { id, label, unit, currency, value, source }
          : { id, label, unit, currency, value, note, source };
      this.#nodes[id] = bounds === undefined ? node : { ...node, bounds };
      return id;
    }
    const id = this.#freeId(name);
    this.#ids.set(figure, id);
    if (!this.#withDerivations) {
      this.#nodes[id] =
        note === undefined
          ? { id, label, unit, currency, value }
          : { id, label, unit, currency, value, note };
      return id;
    }
    const inputs = how.inputs.map((inner) => this.#ids.get(inner) ?? this.#addBelow(root, inner));
    const { kind: operation, settings } = how;
    const derivation = settings === undefined ? { operation, inputs } : { operation, inputs, settings };
    this.#nodes[id] =
      note === undefined
        ? { id, label, unit, currency, value, how: derivation }
        : { id, label, unit, currency, value, note, how: derivation };
    return id;
  }

  #addBelow(root: Root, figure: Figure): string {
    if (figure.how.kind === 'input') return this.#addNew('', root, figure);
    root.below += 1;
    return this.#addNew(`${root.name}.${root.below}`, root, figure);
  }

  table(): FigureTable {
    return this.#nodes;
  }

  #freeId(name: string): string {
    let id = name;
    for (let copy = 2; this.#nodes[id] !== undefined; copy += 1) id = `${name}~${copy}`;
    return id;
  }
}

/** One table for the named figures, with the id of each. */
export function toTable<Name extends string>(
  figures: Readonly<Record<Name, Figure>>,
  options: { withDerivations: boolean },
): { ids: Record<Name, string>; figures: FigureTable } {
  const builder = new FigureTableBuilder(options);
  const ids = {} as Record<Name, string>;
  for (const name of Object.keys(figures) as Name[]) ids[name] = builder.add(name, figures[name]);
  return { ids, figures: builder.table() };
}
