import {
  checkCodes,
  checkDesign,
  type DrawnBill,
  type DrawnDesign,
  EMPTY_BILL,
  type KnownCodes,
} from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import type { FieldMessage } from '../../../components/field.tsx';
import { sentence } from '../../../lib/sentence.ts';
import type { RecordChoices } from '../api/list-bill-choices.ts';
import { byKind, type DraftState } from './bill-draft.ts';
import { BILL_KINDS, type BillKind, type BillRow } from './bill-fields.ts';
import { placeIn } from './place-words.ts';
import { readParameter, readVariant } from './read-parameters.ts';
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

/** A cell of the grids. */
export interface CellPlace {
  readonly row: GridRow;
  readonly path: string;
}

export interface DraftReading {
  /** null while anything is to mend. */
  readonly whole: DrawnDesign | null;
  /** What can be read so far. */
  readonly drawn: DrawnDesign;
  /** The cell that a path into `drawn` leads to ("bill.parts.3.length"). */
  readonly placeOf: (field: string) => CellPlace | undefined;
  readonly errors: BillErrors;
  readonly count: number;
}

/**
 * Reads the whole draft.
 * @param records what it may name; undefined while that is not known yet
 */
export function readDraft(state: DraftState, records: RecordChoices | undefined): DraftReading {
  const { unitSystem, bill } = state;
  const errors = new Map<string, Map<string, FieldMessage>>();
  let count = 0;
  const wrong = (row: GridRow, path: string, message: FieldMessage): void => {
    const ofRow = errors.get(row.key) ?? new Map<string, FieldMessage>();
    // What is wrong with a text itself comes before what follows from it.
    if (ofRow.has(path)) return;
    count += 1;
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
  const parameters = state.parameters.map((row, at) => {
    const { value, errors: found } = readParameter(row, at, unitSystem);
    for (const [path, message] of found) wrong(row, path, message);
    return value;
  });
  const variants = state.variants.map((row, at) => {
    const { value, errors: found } = readVariant(row, at, state.parameters, unitSystem);
    for (const [path, message] of found) wrong(row, path, message);
    return value;
  });
  const drawn: DrawnDesign = { bill: whole, parameters, variants };
  const placeOf = (field: string): CellPlace | undefined =>
    placeIn(field, { ...state, bill: { ...bill, ...readable } });
  const unread = new Set(state.parameters.filter((_, at) => parameters[at]?.value === ''));
  const isUnread = ({ row, path }: CellPlace): boolean => path === 'value' && unread.has(row);
  const found = [
    ...(records ? checkCodes(drawn, knownCodes(records)) : []),
    ...checkDesign(drawn, unitSystem === 'metric' ? 'mm' : 'in'),
  ];
  for (const { field, message, mend } of found) {
    const place = placeOf(field);
    // A parameter that could not be read has no value; why is told where it could not be read.
    if (place && !isUnread(place))
      wrong(place.row, place.path, { message: asSentence(message), mend: asSentence(mend) });
  }
  return { whole: count === 0 ? drawn : null, drawn, placeOf, errors, count };
}

function knownCodes(records: RecordChoices): KnownCodes {
  const idsOf = (choices: RecordChoices[keyof RecordChoices]) => new Set(choices.map(({ id }) => id));
  return {
    materials: idsOf(records.materials),
    grades: idsOf(records.grades),
    machines: idsOf(records.machines),
  };
}
