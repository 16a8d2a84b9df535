import type { QuoteDraft } from '@scantling/quoting';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { optionalDecimal, plainDecimal } from '../../../lib/percent.ts';

export type DraftLine = QuoteDraft['lines'][number];
export type Pictures = QuoteDraft['pictures'];

/** The cells of a line: what is typed stays text, readable or not. */
const LINE_CELLS = [
  'description',
  'details',
  'from',
  'quantity',
  'unit',
  'price',
  'tax',
  'taken',
  'group',
  'standard',
  'cost',
] as const;
export type LineCell = (typeof LINE_CELLS)[number];

/** A line as it stands in the grid; its key is the line's id. */
export interface LineForm extends GridRow {
  readonly pictures: Pictures;
}

/** What `from` holds where a line comes from no cost sheet; else it is the id of one. */
export const OWN_LINE = 'free';
export const DELIVERY = 'delivery';

export const cell = ({ cells }: GridRow, name: LineCell): string => cells[name] ?? '';

export const isFromSheet = (row: GridRow): boolean => {
  const from = cell(row, 'from');
  return from !== '' && from !== OWN_LINE && from !== DELIVERY;
};

export const freshId = (): string => newIdempotencyKey().slice(0, 12);

/** All cells in one order, so that lines that say the same are the same as text. */
function allCells(given: Partial<Record<LineCell, string>>): LineForm['cells'] {
  return Object.fromEntries(LINE_CELLS.map((name) => [name, given[name] ?? '']));
}

/** A new line under a tax, or a copy of one. */
export function freshLine(tax: string, from?: LineForm): LineForm {
  if (from) return { ...from, key: freshId() };
  const cells = allCells({ from: OWN_LINE, quantity: '1', tax, taken: 'included' });
  return { key: freshId(), cells, pictures: [] };
}

function ownCells(line: DraftLine): Partial<Record<LineCell, string>> {
  if (line.kind === 'cost-sheet') return { from: line.costSheetId, quantity: String(line.pieces) };
  const { price, cost } = line;
  if (line.kind === 'delivery') return { from: DELIVERY, price, cost: cost ?? '' };
  return { from: OWN_LINE, quantity: line.quantity, unit: line.unit, price, cost: cost ?? '' };
}

export function lineForm(line: DraftLine): LineForm {
  const { id, description, details, tax, choice, pictures } = line;
  const ofGroup =
    choice.kind === 'alternate' ? { group: choice.group, standard: choice.isStandard ? 'yes' : '' } : {};
  return {
    key: id,
    cells: allCells({ description, details, tax, taken: choice.kind, ...ofGroup, ...ownCells(line) }),
    pictures,
  };
}

function choiceOf(line: LineForm): DraftLine['choice'] {
  const taken = cell(line, 'taken');
  if (taken === 'alternate')
    return { kind: 'alternate', group: cell(line, 'group'), isStandard: cell(line, 'standard') === 'yes' };
  return { kind: taken === 'option' ? 'option' : 'included' };
}

/** The line its cells say; what cannot be read goes on as it is, to be named where it is checked. */
export function draftLine(line: LineForm): DraftLine {
  const text = (name: LineCell): string => cell(line, name);
  const common = {
    id: line.key,
    description: text('description'),
    details: text('details'),
    tax: text('tax'),
    pictures: line.pictures,
    choice: choiceOf(line),
  };
  const from = text('from');
  if (isFromSheet(line))
    return { ...common, kind: 'cost-sheet', costSheetId: from, pieces: Number(text('quantity')) };
  const priced = { ...common, price: plainDecimal(text('price')), cost: optionalDecimal(text('cost')) };
  if (from === DELIVERY) return { ...priced, kind: 'delivery' };
  return { ...priced, kind: 'free', quantity: plainDecimal(text('quantity')), unit: text('unit') };
}

const isLine = (row: GridRow): row is LineForm => 'pictures' in row;

/** Rows as the grid answers them: changed ones are copies of their lines, pictures included. */
export function linesOf(rows: readonly GridRow[]): readonly LineForm[] {
  return rows.map((row) => (isLine(row) ? row : { ...row, pictures: [] }));
}
