import { type Decimal, decimal } from '@scantling/decimals';
import { OPERATIONS } from './operations/index.ts';
import { NoAnswerError } from './operations/operation.ts';
import { UnknownFigureError } from './recalculation/index.ts';
import type { FigureNode, FigureTable } from './table.ts';

/** The figures below the roots, inputs before what is derived from them. */
function inOrder(table: FigureTable, roots: readonly string[]): FigureNode[] {
  const seen = new Set<string>();
  const ordered: FigureNode[] = [];
  const visit = (id: string): void => {
    if (seen.has(id)) return;
    seen.add(id);
    const node = table[id];
    if (node === undefined) throw new UnknownFigureError(id);
    for (const below of node.how?.inputs ?? []) visit(below);
    ordered.push(node);
  };
  for (const id of roots) visit(id);
  return ordered;
}

/**
 * A table that can be changed leaf after leaf: each change works out again only what rests on it. `recalculate` does the
 * same for one set of changes at once.
 */
export class GraphValues {
  readonly #nodes: readonly FigureNode[];
  readonly #places = new Map<string, number>();
  readonly #users: number[][];
  readonly #values: Decimal[];
  readonly #extra = new Map<number, Decimal>();
  readonly #dirty = new Set<number>();

  /** @param roots the figures that will be asked for; the rest of the table is left aside. @throws UnknownFigureError */
  constructor(table: FigureTable, roots: readonly string[]) {
    this.#nodes = inOrder(table, roots);
    this.#values = this.#nodes.map(({ value }) => decimal(value));
    this.#users = this.#nodes.map(() => []);
    for (const [place, node] of this.#nodes.entries()) {
      this.#places.set(node.id, place);
      for (const below of node.how?.inputs ?? []) this.#users[this.#place(below)]?.push(place);
    }
  }

  has(id: string): boolean {
    return this.#places.has(id);
  }

  /** @throws UnknownFigureError */
  value(id: string): Decimal {
    return this.#values[this.#place(id)] ?? decimal(0);
  }

  /** Gives a leaf another value. @throws UnknownFigureError */
  set(id: string, value: Decimal): void {
    const place = this.#place(id);
    if (this.value(id).eq(value)) return;
    this.#values[place] = value;
    this.#mark(place);
    this.#workOut();
  }

  /** Adds an amount to a derived figure, as if one more input stood in its sum. @throws UnknownFigureError */
  add(id: string, amount: Decimal): void {
    if (amount.isZero()) return;
    const place = this.#place(id);
    this.#extra.set(place, (this.#extra.get(place) ?? decimal(0)).plus(amount));
    this.#dirty.add(place);
    this.#workOut();
  }

  #place(id: string): number {
    const place = this.#places.get(id);
    if (place === undefined) throw new UnknownFigureError(id);
    return place;
  }

  #mark(place: number): void {
    for (const user of this.#users[place] ?? []) this.#dirty.add(user);
  }

  #workOut(): void {
    // What has no answer between two states (a divisor of nothing) stays as it was and is tried again at the next change.
    const stuck = new Set<number>();
    for (let place = 0; this.#dirty.size > stuck.size && place < this.#nodes.length; place += 1) {
      if (!this.#dirty.has(place)) continue;
      const worked = this.#evaluate(place);
      if (worked === null) {
        stuck.add(place);
        continue;
      }
      this.#dirty.delete(place);
      if (this.#values[place]?.eq(worked)) continue;
      this.#values[place] = worked;
      this.#mark(place);
    }
  }

  #evaluate(place: number): Decimal | null {
    const how = this.#nodes[place]?.how;
    if (how === undefined) return this.#values[place] ?? null;
    const extra = this.#extra.get(place);
    try {
      const inputs = how.inputs.map((id) => this.value(id));
      const worked = OPERATIONS[how.operation].evaluate(inputs, how.settings ?? {});
      return extra === undefined ? worked : worked.plus(extra);
    } catch (error) {
      if (error instanceof NoAnswerError) return null;
      throw error;
    }
  }
}
