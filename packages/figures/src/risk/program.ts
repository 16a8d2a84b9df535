import type { Settings } from '../operations/operation.ts';
import type { PreparedTable } from '../recalculation/index.ts';
import { BLOCK, type Column } from './column-arithmetic.ts';
import { COLUMN_OPERATIONS, type ColumnOperation } from './column-operations.ts';

interface Step {
  readonly work: ColumnOperation;
  readonly out: Column;
  readonly inputs: readonly Column[];
  readonly settings: Settings;
}

/** The part of a table that moves with some of its figures, as a list of steps over columns of samples. */
export interface Program {
  /** The column of a figure: filled by the caller for what is sampled, by `run` for what rests on it. */
  column(place: number): Column;
  /** Works out one block. */
  run(): void;
  readonly steps: number;
}

/**
 * Compiles once what lies between sampled figures and results; all else stands as its value.
 * @param moving what rests on the sampled figures and leads to the results, in order
 */
export function compileProgram(
  table: PreparedTable,
  sampled: readonly number[],
  moving: readonly number[],
  valueAt: (place: number) => number,
): Program {
  const columns = new Map<number, Column>();
  const column = (place: number): Column => {
    const known = columns.get(place);
    if (known) return known;
    const made = new Float64Array(BLOCK).fill(valueAt(place));
    columns.set(place, made);
    return made;
  };
  for (const place of sampled) columns.set(place, new Float64Array(BLOCK));
  const isSampled = new Set(sampled);
  const steps: Step[] = [];
  for (const place of moving) {
    const figure = table.figures[place];
    if (figure === undefined || figure.operation === null || isSampled.has(place)) continue;
    const inputs = figure.inputs.map(column);
    const [only] = inputs;
    if (figure.operation === 'same' && only !== undefined) {
      columns.set(place, only);
      continue;
    }
    const out = new Float64Array(BLOCK);
    columns.set(place, out);
    steps.push({ work: COLUMN_OPERATIONS[figure.operation], out, inputs, settings: figure.settings });
  }
  return {
    column,
    run: () => {
      for (const { work, out, inputs, settings } of steps) work(out, inputs, settings);
    },
    steps: steps.length,
  };
}
