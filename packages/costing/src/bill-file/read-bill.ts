import type { LengthUnit } from '@scantling/units';
import { FINISHED_FACES, GRAINS } from '../bill-of-materials/index.ts';
import type {
  DrawnAssembly,
  DrawnComponent,
  DrawnConsumable,
  DrawnDesign,
  DrawnFinishStep,
  DrawnOperation,
  DrawnPart,
  Parameter,
} from '../design-parameters/index.ts';
import { type BillCells, ROW_KINDS, type RowKind } from './bill-columns.ts';
import type { BillLines } from './place-problem.ts';
import { readParameter, readVariants, type VariantRow } from './read-parameter.ts';
import { type BillRowProblem, RowCells } from './row-cells.ts';

export interface ReadBill {
  /** The design the file holds, or null while any row has a problem: it is taken whole or not at all. */
  readonly drawing: DrawnDesign | null;
  readonly problems: readonly BillRowProblem[];
  readonly lines: BillLines;
}

interface NumberedCells {
  /** Line of the file, headers being line 1. */
  readonly line: number;
  readonly cells: BillCells;
}

/**
 * Reads the rows of a bill file: parameters, variants and the bill itself. Nothing is guessed: an unreadable cell is a
 * problem naming line, column and mend.
 * @param unit what a bare number means as a length
 * @param rowKind what every row is, where the file does not say it
 */
export function readBill(rows: readonly NumberedCells[], unit: LengthUnit, rowKind?: RowKind): ReadBill {
  const assemblies: DrawnAssembly[] = [];
  const parts: DrawnPart[] = [];
  const components: DrawnComponent[] = [];
  const finishes: DrawnFinishStep[] = [];
  const consumables: DrawnConsumable[] = [];
  const operations: DrawnOperation[] = [];
  const parameters: Parameter[] = [];
  const variantRows: VariantRow[] = [];
  const problems: BillRowProblem[] = [];
  const lines: Record<keyof BillLines, number[]> = {
    parameters: [],
    variants: [],
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
    else if (kind === 'parameter') parameters.push(readParameter(row));
    else if (kind === 'variant') variantRows.push({ ...named(row), row });
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
    if (kind !== 'variant') problems.push(...row.problems);
  }
  // A variant's values are read by the kinds of the parameters, wherever those stand.
  const variants = readVariants(variantRows, parameters);
  problems.push(...variantRows.flatMap(({ row }) => row.problems));
  const bill = { assemblies, parts, components, finishes, consumables, operations };
  return { drawing: problems.length === 0 ? { bill, parameters, variants } : null, problems, lines };
}

const KEPT_AS = {
  parameter: 'parameters',
  variant: 'variants',
  assembly: 'assemblies',
  part: 'parts',
  component: 'components',
  finish: 'finishes',
  consumable: 'consumables',
  operation: 'operations',
} as const satisfies Record<RowKind, keyof BillLines>;

function named(row: RowCells): { id: string; name: string } {
  return { id: row.text('id'), name: row.text('name') };
}

/** Leaves out what the file leaves empty, so that a bill read back equals the bill written. */
function given<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}

function readPart(row: RowCells): DrawnPart {
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

function readComponent(row: RowCells): DrawnComponent {
  return {
    ...named(row),
    quantity: row.number('quantity'),
    material: row.text('material'),
    ...given({ assembly: row.optional('assembly') }),
  };
}

function readFinish(row: RowCells): DrawnFinishStep {
  return {
    ...named(row),
    material: row.text('material'),
    coats: row.whole('coats', 1),
    transferEfficiency: row.optionalShare('transfer efficiency') ?? '1',
    parts: row.optional('parts')?.split(/\s+/) ?? [],
    ...given({ dryFilmUm: row.optionalNumber('dry film um'), batchRest: row.optionalNumber('batch rest l') }),
  };
}

function readOperation(row: RowCells): DrawnOperation {
  return {
    ...named(row),
    setupHours: row.number('setup h', '0'),
    runHours: row.number('run h', '0'),
    elapsedHours: row.number('elapsed h', '0'),
    grade: row.text('grade'),
    ...given({
      assembly: row.optional('assembly'),
      machine: row.optional('machine'),
      runHoursLow: row.optionalNumber('run low h'),
      runHoursHigh: row.optionalNumber('run high h'),
      machineShare: row.plainNumber('machine share'),
      learningRate: row.optionalShare('learning rate'),
    }),
  };
}
