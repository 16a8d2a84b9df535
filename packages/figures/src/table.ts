import type { Currency } from '@scantling/money';
import type { Unit } from '@scantling/units';
import type { Figure } from './figure.ts';
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

/**
 * Collects figures into one table of nodes. Ids are stable for the same input: a leaf's is its key, a derived
 * figure's the name under which it was added, or the path to it from there.
 */
export class FigureTableBuilder {
  readonly #ids = new Map<Figure, string>();
  readonly #nodes: Record<string, FigureNode> = {};
  readonly #withDerivations: boolean;

  constructor(options: { withDerivations: boolean }) {
    this.#withDerivations = options.withDerivations;
  }

  /** Adds a figure (with all it rests on, where derivations are asked for) and answers its id. */
  add(name: string, figure: Figure): string {
    const known = this.#ids.get(figure);
    if (known !== undefined) return known;
    const { how } = figure;
    const id = how.kind === 'input' ? how.key : this.#freeId(name);
    if (how.kind === 'input' && this.#nodes[id] && this.#nodes[id].value !== figure.value.toString()) {
      throw new LeafClashError(how.key);
    }
    this.#ids.set(figure, id);
    const inputs =
      how.kind === 'input' || !this.#withDerivations
        ? []
        : how.inputs.map((inner, index) => this.add(`${id}.${index + 1}`, inner));
    this.#nodes[id] = {
      id,
      label: figure.label,
      unit: figure.unit,
      currency: figure.currency,
      value: figure.value.toString(),
      ...(figure.note === undefined ? {} : { note: figure.note }),
      ...(how.kind === 'input'
        ? { source: how.source }
        : this.#withDerivations
          ? { how: { operation: how.kind, inputs, ...(how.settings ? { settings: how.settings } : {}) } }
          : {}),
    };
    return id;
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
