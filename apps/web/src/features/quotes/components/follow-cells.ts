import { cell, DELIVERY, freshLine, type LineCell, type LineForm, OWN_LINE } from './line-cells.ts';

export interface LineSheet {
  readonly id: string;
  readonly designName: string;
  readonly pieces: number;
}

type Cells = Partial<Record<LineCell, string>>;

/** What a line gains and loses with where it comes from: a cost sheet says the price itself. */
function ofOrigin(line: LineForm, sheets: readonly LineSheet[]): Cells {
  const from = cell(line, 'from');
  const sheet = sheets.find(({ id }) => id === from);
  const description = cell(line, 'description');
  const quantity = cell(line, 'quantity');
  if (sheet)
    return {
      description: description || sheet.designName,
      quantity: quantity || String(sheet.pieces),
      unit: '',
      price: '',
      cost: '',
    };
  if (from === DELIVERY) return { description: description || 'Delivery', quantity: '', unit: '' };
  return from === OWN_LINE ? { quantity: quantity || '1' } : {};
}

/** A line whose origin or way to be taken was cleared is an own line, and always part of the offer. */
function withDefaults(line: LineForm): LineForm {
  const from = cell(line, 'from') || OWN_LINE;
  const taken = cell(line, 'taken') || 'included';
  return { ...line, cells: { ...line.cells, from, taken } };
}

function followed(changed: LineForm, before: LineForm, sheets: readonly LineSheet[]): LineForm {
  const line = withDefaults(changed);
  const hasChanged = (name: LineCell): boolean => cell(line, name) !== cell(before, name);
  const isLeavingGroup = cell(before, 'taken') === 'alternate' && cell(line, 'taken') !== 'alternate';
  const cells = {
    ...(hasChanged('from') ? ofOrigin(line, sheets) : {}),
    ...(isLeavingGroup ? { group: '', standard: '' } : {}),
  };
  return Object.keys(cells).length === 0 ? line : { ...line, cells: { ...line.cells, ...cells } };
}

/** Lines after a step, with what follows from it in their other cells. */
export function withFollowing(
  lines: readonly LineForm[],
  before: readonly LineForm[],
  sheets: readonly LineSheet[],
): readonly LineForm[] {
  const known = new Map(before.map((line) => [line.key, line]));
  return lines.map((line) => {
    const was = known.get(line.key);
    if (was === line) return line;
    return followed(line, was ?? freshLine(''), sheets);
  });
}
