import { type Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import { NoAnswerError } from '../operations/operation.ts';
import type { FigureTable } from '../table.ts';
import { Effort } from './effort.ts';
import { type PreparedTable, prepareTable } from './prepare-table.ts';
import { workOutFigure } from './work-out-figure.ts';

/** A figure that has no answer: why, and under which name people know it. */
export interface FigureFault {
  readonly id: string;
  readonly label: string;
  readonly reason: string;
}

/** What some changed leaves bring about. */
export interface Recalculated {
  /** Every figure whose value is now another, by id, the leaves among them. */
  readonly changed: ReadonlyMap<string, Decimal>;
  /** Figures that have no answer any more. */
  readonly faults: readonly FigureFault[];
  /** Ids of all figures without a value now: those at fault and what rests on them. */
  readonly lost: ReadonlySet<string>;
}

/** A value, or that there is none. */
export type Worked = Decimal | null;

/**
 * A table worked out once, which then answers one change after another: only what rests on a changed leaf, and only as
 * far as values move, is worked out again, with the very operations the figures were derived by. A figure without an
 * answer is named and takes what rests on it along; the rest is answered.
 */
export class Recalculation {
  readonly table: PreparedTable;
  /** Figures of the table as given that have no answer. */
  readonly faults: readonly FigureFault[];
  readonly #values: readonly Worked[];
  readonly #effort: Effort;

  /** @throws UnknownFigureError, FigureTableError, NotADecimalError, TooMuchWorkError */
  constructor(table: FigureTable, effort = new Effort()) {
    this.table = prepareTable(table);
    this.#effort = effort;
    const values: Worked[] = [];
    const faults: FigureFault[] = [];
    this.table.figures.forEach((_, place) => {
      values.push(this.#work(place, (input) => values[input] ?? null, faults));
    });
    this.#values = values;
    this.faults = faults;
  }

  /** The value a figure has before any change. */
  value(place: number): Worked {
    return this.#values[place] ?? null;
  }

  /** What some leaves at other values come to. @throws UnknownFigureError, NotADecimalError, TooMuchWorkError */
  change(changes: Readonly<Record<string, DecimalLike>>): Recalculated {
    const set = new Map(
      Object.entries(changes).map(([id, value]) => [this.table.leafPlace(id), decimal(value)]),
    );
    const faults: FigureFault[] = [];
    const moved = this.move(set, this.cone([...set.keys()]), faults);
    const changed = new Map<string, Decimal>();
    const lost = new Set<string>();
    for (const [place, value] of moved) {
      const id = this.table.figures[place]?.node.id ?? '';
      if (value === null) lost.add(id);
      else changed.set(id, value);
    }
    return { changed, faults, lost };
  }

  /**
   * The figures that rest on any of the given ones, in the order in which they are worked out.
   * @param within only these, where a question asks for some results alone
   */
  cone(places: readonly number[], within?: ReadonlySet<number>): number[] {
    const seen = new Set<number>();
    const waiting = [...places];
    for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
      for (const dependent of this.table.figures[place]?.dependents ?? []) {
        if (seen.has(dependent) || within?.has(dependent) === false) continue;
        seen.add(dependent);
        waiting.push(dependent);
      }
    }
    return [...seen].sort((a, b) => a - b);
  }

  /** The figures that the given ones rest on, and these themselves. */
  basis(places: readonly number[]): Set<number> {
    const seen = new Set(places);
    const waiting = [...places];
    for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
      for (const input of this.table.figures[place]?.inputs ?? []) {
        if (seen.has(input)) continue;
        seen.add(input);
        waiting.push(input);
      }
    }
    return seen;
  }

  /**
   * What moves when some figures take other values: places with their new value, null where there is none any more.
   * @param cone figures that may move, in order
   * @param faults takes the figures that have no answer
   */
  move(
    set: ReadonlyMap<number, Decimal>,
    cone: readonly number[],
    faults: FigureFault[],
  ): Map<number, Worked> {
    const moved = new Map<number, Worked>();
    for (const [place, value] of set) if (!isSame(value, this.value(place))) moved.set(place, value);
    const read = (input: number) => {
      const now = moved.get(input);
      return now === undefined ? this.value(input) : now;
    };
    for (const place of cone) {
      if (set.has(place)) continue;
      const inputs = this.table.figures[place]?.inputs;
      if (inputs?.some((input) => moved.has(input)) !== true) continue;
      const worked = this.#work(place, read, faults);
      if (!isSame(worked, this.value(place))) moved.set(place, worked);
    }
    return moved;
  }

  #work(place: number, read: (input: number) => Worked, faults: FigureFault[]): Worked {
    const figure = this.table.figures[place];
    if (figure === undefined) return null;
    if (figure.operation === null) return figure.given;
    this.#effort.spend(figure.operation, figure.inputs.length);
    const inputs: Decimal[] = [];
    for (const input of figure.inputs) {
      const value = read(input);
      if (value === null) return null;
      inputs.push(value);
    }
    try {
      return workOutFigure(figure, inputs);
    } catch (error) {
      if (!(error instanceof NoAnswerError)) throw error;
      const { id, label } = figure.node;
      faults.push({ id, label, reason: error.reason });
      return null;
    }
  }
}

function isSame(a: Worked, b: Worked): boolean {
  return a === null || b === null ? a === b : a.eq(b);
}
