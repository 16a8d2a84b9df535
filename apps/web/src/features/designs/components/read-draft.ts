import { checkCodes, checkDesign, type DrawnBill, type DrawnDesign, EMPTY_BILL } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import type { FieldMessage } from '../../../components/field.tsx';
import { sentence } from '../../../lib/sentence.ts';
import type { RecordChoices } from '../api/list-bill-choices.ts';
import { byKind, type DraftState } from './bill-draft.ts';
import { BILL_FIELDS, BILL_KINDS, type BillKind, type BillRow } from './bill-fields.ts';
import { isKind } from './place-words.ts';
import { readRow } from './read-row.ts';

type RowReading = ReturnType<typeof readRow>;
const readings = new WeakMap<GridRow, Map<LengthSystem, RowReading>>();

/** Rows never change, so each is read once. */
function readOnce(kind: BillKind, row: GridRow, system: LengthSystem): RowReading {
  const known = readings.get(row) ?? new Map<LengthSystem, RowReading>();
  readings.set(row, known);
  const reading = known.get(system) ?? readRow(kind, row.cells, system);
  known.set(system, reading);
  return reading;
}

const asSentence = (words: string): string => sentence('', words.charAt(0).toUpperCase() + words.slice(1));

/** What is wrong with a bill: by the key of the row and the path of the value. */
export type BillErrors = ReadonlyMap<string, ReadonlyMap<string, FieldMessage>>;

export interface DraftReading {
  /** null while anything is to mend. */
  readonly bill: DrawnBill | null;
  readonly errors: BillErrors;
  readonly count: number;
}

/** What formulas and materials of a bill may name beside its own rows. */
export type Choosable = Pick<DrawnDesign, 'parameters' | 'variants'>;
const NOTHING_TO_CHOOSE: Choosable = { parameters: [], variants: [] };

/**
 * Reads the whole draft.
 * @param records what it may name; undefined while that is not known yet
 */
export function readDraft(
  { unitSystem, bill }: DraftState,
  records: RecordChoices | undefined,
  choosable: Choosable = NOTHING_TO_CHOOSE,
): DraftReading {
  const errors = new Map<string, Map<string, FieldMessage>>();
  let count = 0;
  const wrong = (row: GridRow, path: string, message: FieldMessage): void => {
    const ofRow = errors.get(row.key) ?? new Map<string, FieldMessage>();
    if (!ofRow.has(path)) count += 1;
    errors.set(row.key, ofRow.set(path, message));
  };
  const readable = byKind<GridRow[]>(() => []);
  let whole: DrawnBill = EMPTY_BILL;
  for (const kind of BILL_KINDS) {
    const found = bill[kind].flatMap((row): readonly BillRow[] => {
      const read = readOnce(kind, row, unitSystem);
      for (const error of read.errors) wrong(row, error.field, error);
      if (read.bill === null) return [];
      readable[kind].push(row);
      return read.bill[kind];
    });
    whole = { ...whole, [kind]: found };
  }
  const idsOf = (choices: RecordChoices[keyof RecordChoices]) => new Set(choices.map(({ id }) => id));
  const known = records && {
    materials: idsOf(records.materials),
    grades: idsOf(records.grades),
    machines: idsOf(records.machines),
  };
  const drawing = { bill: whole, ...choosable };
  const found = [
    ...(known ? checkCodes(drawing, known) : []),
    ...checkDesign(drawing, unitSystem === 'metric' ? 'mm' : 'in'),
  ];
  for (const { field, message, mend } of found) {
    const [, kind, at, ...path] = field.split('.');
    const row = isKind(kind) ? readable[kind][Number(at)] : undefined;
    if (row && isKind(kind))
      wrong(row, fieldPath(kind, path), { message: asSentence(message), mend: asSentence(mend) });
  }
  return { bill: count === 0 ? whole : null, errors, count };
}

/** The field a problem's path leads to: one entry of a list is told at the list. */
function fieldPath(kind: BillKind, path: readonly string[]): string {
  const whole = path.join('.');
  return BILL_FIELDS[kind].some((field) => field.path === whole) ? whole : (path[0] ?? whole);
}
