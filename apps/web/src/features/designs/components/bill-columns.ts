import { isFormula, type Parameter } from '@scantling/costing';
import { formatLength, type LengthSystem } from '@scantling/units';
import type { Choice } from '../../../components/choice-list.tsx';
import { type CellReading, choiceNamed, type EditColumn } from '../../../components/edit-grid/edit-column.ts';
import { readYesNo } from '../../../components/edit-grid/read-yes-no.ts';
import { lengthText } from '../../../lib/length-text.ts';
import type { RecordChoices } from '../api/list-bill-choices.ts';
import type { BillDraft } from './bill-draft.ts';
import { BILL_FIELDS, type BillField, type BillKind, type ChoiceSource } from './bill-fields.ts';
import { furtherText, unitOf } from './bill-text.ts';
import { readValue, Unreadable } from './read-row.ts';

/** Everything a value of the bill can be chosen from. */
export type BillChoices = Readonly<Record<ChoiceSource, readonly Choice[]>>;

const NOTHING: readonly Choice[] = [];

/** The records of the workshop, the materials to choose by parameters, and the assemblies and parts of the draft itself. */
export function billChoices(
  records: RecordChoices | undefined,
  bill: BillDraft,
  parameters: readonly Parameter[] = [],
): BillChoices {
  const idsOf = (kind: 'assemblies' | 'parts'): Choice[] =>
    bill[kind].flatMap(({ cells: { id = '', name } }) => (id === '' ? [] : [{ id, label: id, note: name }]));
  return {
    materials: [
      ...parameters
        .filter(({ kind }) => kind === 'material')
        .map(({ id, label }) => ({ id, label: id, note: `parameter: ${label}` })),
      ...(records?.materials ?? NOTHING),
    ],
    grades: records?.grades ?? NOTHING,
    machines: records?.machines ?? NOTHING,
    assemblies: idsOf('assemblies'),
    parts: idsOf('parts'),
  };
}

/** What a field is chosen from, or undefined where it is typed. */
export function choicesOf(field: BillField, from: BillChoices): readonly Choice[] | undefined {
  if (field.choicesFrom) return from[field.choicesFrom];
  return field.choices?.map((id) => ({ id, label: id.replaceAll('-', ' ') }));
}

/** A length in both systems, so that a length typed in one is checked against the other. */
export function lengthNote(mm: string, system: LengthSystem): string {
  const [own, other] =
    system === 'metric' ? (['metric', 'imperial'] as const) : (['imperial', 'metric'] as const);
  return `${formatLength(mm, own, { denominator: 64, places: 6 })}, ${formatLength(mm, other, { denominator: 64 })}`;
}

function readTyped(field: BillField, text: string, system: LengthSystem): CellReading {
  try {
    const value = readValue(field, text, system);
    if (isFormula(value)) return { text: `= ${value.formula}` };
    if (field.form !== 'length') return { text };
    return { text: lengthText(String(value), system), note: lengthNote(String(value), system) };
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    return { error: { message: error.message, mend: error.mend } };
  }
}

const WIDTHS: Readonly<Record<BillField['form'], number>> = {
  text: 140,
  count: 84,
  number: 96,
  length: 108,
  percent: 96,
  choice: 108,
  'yes-no': 120,
  ids: 160,
};
const NUMERIC: readonly BillField['form'][] = ['count', 'number', 'length', 'percent'];

const WITH_FORMULA = 190;

/** Heads of further columns are long; a column is never narrower than its head. */
function widthOf(field: BillField, header: string): number {
  if (field.path === 'name') return 190;
  return Math.max(WIDTHS[field.form], header.length * 7 + 26);
}

/** A field as a column of a grid. */
export function columnOf(field: BillField, system: LengthSystem, from: BillChoices): EditColumn {
  const choices = choicesOf(field, from);
  const unit = unitOf(field, system);
  const header = unit === '' ? field.label : `${field.label}, ${unit}`;
  const isTyped = choices === undefined;
  return {
    id: field.path,
    header,
    width: widthOf(field, header),
    isNumeric: NUMERIC.includes(field.form),
    kind: field.form === 'yes-no' ? 'yes-no' : field.form === 'ids' ? 'choices' : isTyped ? 'text' : 'choice',
    ...(isTyped ? {} : { choices }),
    read: (text) => {
      if (field.form === 'yes-no') return readYesNo(text);
      if (choices === undefined || field.form === 'ids') return readTyped(field, text, system);
      return { text: choiceNamed(choices, text) ?? text };
    },
  };
}

interface ColumnWishes {
  readonly system: LengthSystem;
  readonly choices: BillChoices;
  /** Every value has a column of its own; else the rarer ones share one. */
  readonly isWhole: boolean;
  /** Fields that hold a formula in some row; what it comes to stands beside it. */
  readonly worked: string;
}

export function billColumns(
  kind: BillKind,
  { system, choices, isWhole, worked }: ColumnWishes,
): readonly EditColumn[] {
  const fields = BILL_FIELDS[kind];
  const columns = fields
    .filter((field) => isWhole || field.isColumn)
    .map((field) => {
      const column = columnOf(field, system, choices);
      const hasFormula = worked.split(' ').includes(field.path);
      return hasFormula ? { ...column, width: Math.max(column.width, WITH_FORMULA) } : column;
    });
  if (isWhole || fields.every(({ isColumn }) => isColumn)) return columns;
  const further: EditColumn = {
    id: 'further',
    header: 'Further',
    width: 240,
    kind: 'details',
    read: (text) => ({ text }),
    shown: ({ cells }) => furtherText(cells, fields, system),
  };
  return [...columns, further];
}
