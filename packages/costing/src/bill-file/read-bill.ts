import type { LengthUnit } from '@scantling/units';
import {
  type Assembly,
  type Bill,
  type Component,
  type Consumable,
  FINISHED_FACES,
  type FinishStep,
  GRAINS,
  type Operation,
  type Part,
} from '../bill-of-materials/index.ts';
import { type BillCells, ROW_KINDS, type RowKind } from './bill-columns.ts';
import type { BillLines } from './place-problem.ts';
import { type BillRowProblem, RowCells } from './row-cells.ts';

export interface ReadBill {
  /** The whole bill, or null while any row has a problem: a bill is taken whole or not at all. */
  readonly bill: Bill | null;
  readonly problems: readonly BillRowProblem[];
  readonly lines: BillLines;
}

interface NumberedCells {
  /** Line of the file, headers being line 1. */
  readonly line: number;
  readonly cells: BillCells;
}

/**
 * Reads the rows of a bill file. Nothing is guessed: an unreadable cell is a problem naming line, column and mend.
 * @param unit what a bare number means as a length
 * @param rowKind what every row is, where the file does not say it
 */
export function readBill(rows: readonly NumberedCells[], unit: LengthUnit, rowKind?: RowKind): ReadBill {
  const assemblies: Assembly[] = [];
  const parts: Part[] = [];
  const components: Component[] = [];
  const finishes: FinishStep[] = [];
  const consumables: Consumable[] = [];
  const operations: Operation[] = [];
  const problems: BillRowProblem[] = [];
  const lines: Record<keyof Bill, number[]> = {
    assemblies: [],
    parts: [],
    components: [],
    finishes: [],
    consumables: [],
    operations: [],
  };
  for (const { line, cells } of rows) {
    const row = new RowCells(cells, line, unit);
    const kind = rowKind ?? ROW_KINDS.find((one) => one === row.optional('row')?.toLowerCase());
    if (kind === undefined)
      problems.push({
        line,
        column: 'row',
        message: `is "${cells.row ?? ''}"`,
        mend: `write ${ROW_KINDS.join(', ')}`,
      });
    else if (kind === 'assembly') assemblies.push({ ...named(row), quantity: row.whole('quantity', 1, 1) });
    else if (kind === 'part') parts.push(readPart(row));
    else if (kind === 'component') components.push(readComponent(row));
    else if (kind === 'finish') finishes.push(readFinish(row));
    else if (kind === 'consumable')
      consumables.push({
        ...named(row),
        material: row.text('material'),
        quantity: row.number('quantity'),
        per: row.oneOf('per', ['piece', 'batch'], 'piece'),
      });
    else operations.push(readOperation(row));
    if (kind !== undefined) lines[KEPT_AS[kind]].push(line);
    problems.push(...row.problems);
  }
  const bill = { assemblies, parts, components, finishes, consumables, operations };
  return { bill: problems.length === 0 ? bill : null, problems, lines };
}

const KEPT_AS = {
  assembly: 'assemblies',
  part: 'parts',
  component: 'components',
  finish: 'finishes',
  consumable: 'consumables',
  operation: 'operations',
} as const satisfies Record<RowKind, keyof Bill>;

function named(row: RowCells): { id: string; name: string } {
  return { id: row.text('id'), name: row.text('name') };
}

/** Leaves out what the file leaves empty, so that a bill read back equals the bill written. */
function given<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}

function readPart(row: RowCells): Part {
  const bandMaterial = row.optional('band material');
  const veneerMaterial = row.optional('veneer material');
  return {
    ...named(row),
    quantity: row.whole('quantity', 1),
    material: row.text('material'),
    length: row.length('length'),
    width: row.length('width'),
    thickness: row.length('thickness'),
    grain: row.oneOf('grain', GRAINS, 'length'),
    facesFinished: row.oneOf('finished', FINISHED_FACES, 'none'),
    ...given({
      assembly: row.optional('assembly'),
      lengthAllowance: row.optionalLength('length allowance'),
      widthAllowance: row.optionalLength('width allowance'),
      staves: row.optional('staves') === undefined ? undefined : row.whole('staves', 1),
      isResawn:
        row.optional('resawn') === undefined ? undefined : row.oneOf('resawn', ['yes', 'no'], 'no') === 'yes',
      edgeBand:
        bandMaterial === undefined
          ? undefined
          : {
              material: bandMaterial,
              thickness: row.length('band thickness'),
              longEdges: edges(row, 'band long edges'),
              endEdges: edges(row, 'band end edges'),
            },
      veneer:
        veneerMaterial === undefined
          ? undefined
          : {
              material: veneerMaterial,
              thickness: row.length('veneer thickness'),
              faces: row.oneOf('veneer faces', ['1', '2'], '2') === '1' ? (1 as const) : (2 as const),
            },
      spares: row.optional('spares') === undefined ? undefined : row.whole('spares', 0),
      rejectShare: row.optionalShare('reject share'),
    }),
  };
}

function edges(row: RowCells, column: 'band long edges' | 'band end edges'): 0 | 1 | 2 {
  const text = row.oneOf(column, ['0', '1', '2'], '0');
  return text === '0' ? 0 : text === '1' ? 1 : 2;
}

function readComponent(row: RowCells): Component {
  return {
    ...named(row),
    quantity: row.number('quantity'),
    material: row.text('material'),
    ...given({ assembly: row.optional('assembly') }),
  };
}

function readFinish(row: RowCells): FinishStep {
  return {
    ...named(row),
    material: row.text('material'),
    coats: row.whole('coats', 1),
    transferEfficiency: row.optionalShare('transfer efficiency') ?? '1',
    parts: row.optional('parts')?.split(/\s+/) ?? [],
    ...given({ dryFilmUm: row.optionalNumber('dry film um'), batchRest: row.optionalNumber('batch rest l') }),
  };
}

function readOperation(row: RowCells): Operation {
  return {
    ...named(row),
    setupHours: row.number('setup h', '0'),
    runHours: row.number('run h', '0'),
    elapsedHours: row.number('elapsed h', '0'),
    grade: row.text('grade'),
    ...given({
      assembly: row.optional('assembly'),
      machine: row.optional('machine'),
      machineShare: row.optionalNumber('machine share'),
      learningRate: row.optionalShare('learning rate'),
    }),
  };
}
