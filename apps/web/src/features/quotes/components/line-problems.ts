import type { Choice } from '../../../components/choice-list.tsx';
import type { FieldMessage } from '../../../components/field.tsx';
import type { FieldError } from '../../../lib/api-problem.ts';
import { plainDecimal } from '../../../lib/percent.ts';
import { cell, DELIVERY, isFromSheet, type LineCell, type LineForm } from './line-cells.ts';

const PRICE = /^-?\d{1,12}(\.\d{1,6})?$/;
const AMOUNT = /^\d{1,12}(\.\d{1,6})?$/;
const QUANTITY = /^\d{1,9}(\.\d{1,6})?$/;
const PIECES = /^[1-9]\d{0,3}$/;
const MOST_PIECES = 2000;

const told = (message: string, mend: string): FieldMessage => ({ message, mend });

export function piecesFault(text: string): FieldMessage | null {
  if (PIECES.test(text) && Number(text) <= MOST_PIECES) return null;
  return told(
    text === '' ? 'How many pieces is not said.' : `"${text}" is no whole number of pieces.`,
    `Enter a number from 1 to ${MOST_PIECES}.`,
  );
}

export function quantityFault(text: string): FieldMessage | null {
  if (QUANTITY.test(plainDecimal(text))) return null;
  return told(
    text === '' ? 'How many is not said.' : `"${text}" is no number of 0 or more.`,
    'Write a number, such as 2 or 2.5, and the unit beside it.',
  );
}

export function priceFault(text: string): FieldMessage | null {
  if (PRICE.test(plainDecimal(text))) return null;
  return told(
    text === '' ? 'The price is not said.' : `"${text}" is no amount of money.`,
    'Write it with digits and one point or comma, such as 1249.90, or -50 for a deduction.',
  );
}

export function costFault(text: string): FieldMessage | null {
  if (text === '' || AMOUNT.test(plainDecimal(text))) return null;
  return told(
    `"${text}" is no amount of 0 or more.`,
    'Write it such as 41.25, or leave it empty where nobody knows.',
  );
}

interface Known {
  readonly taxes: readonly { readonly id: string }[];
  /** Absent while they are being read. */
  readonly sheets: readonly Choice[] | undefined;
}

function whereFrom(line: LineForm, { sheets }: Known): FieldMessage | null {
  const from = cell(line, 'from');
  if (from === '') return told('is not chosen.', 'Choose a cost sheet, "own line" or "delivery".');
  if (!isFromSheet(line) || sheets === undefined || sheets.some(({ id }) => id === from)) return null;
  return told('names no cost sheet.', 'Choose one of the cost sheets, "own line" or "delivery".');
}

function amounts(line: LineForm): [LineCell, FieldMessage | null][] {
  const text = (name: LineCell): string => cell(line, name);
  if (isFromSheet(line)) return [['quantity', piecesFault(text('quantity'))]];
  const priced: [LineCell, FieldMessage | null][] = [
    ['price', priceFault(text('price'))],
    ['cost', costFault(text('cost'))],
  ];
  return text('from') === DELIVERY ? priced : [['quantity', quantityFault(text('quantity'))], ...priced];
}

const TAKEN = ['included', 'option', 'alternate'];

function taking(line: LineForm): [LineCell, FieldMessage | null] {
  const taken = cell(line, 'taken');
  if (!TAKEN.includes(taken))
    return ['taken', told(`"${taken}" is none of the ways.`, 'Choose always, option or one of a group.')];
  const isUnnamed = taken === 'alternate' && cell(line, 'group') === '';
  const message = told(
    'is not named.',
    'Give lines of which the client takes one the same group, such as Top.',
  );
  return ['group', isUnnamed ? message : null];
}

/** What is to mend in one line, by its cells. */
export function lineProblems(line: LineForm, known: Known): readonly [LineCell, FieldMessage][] {
  const tax = cell(line, 'tax');
  const all: [LineCell, FieldMessage | null][] = [
    [
      'description',
      cell(line, 'description') === ''
        ? told('What is offered is not said.', 'Write the line as the client reads it.')
        : null,
    ],
    ['from', whereFrom(line, known)],
    ...amounts(line),
    [
      'tax',
      known.taxes.some(({ id }) => id === tax)
        ? null
        : told(
            tax === '' ? 'is not chosen.' : `"${tax}" is none of the taxes of this quote.`,
            'Choose one of them.',
          ),
    ],
    taking(line),
  ];
  return all.flatMap(([name, message]): [LineCell, FieldMessage][] => (message ? [[name, message]] : []));
}

const CELL_OF: Readonly<Record<string, LineCell>> = {
  description: 'description',
  kind: 'from',
  costSheetId: 'from',
  pieces: 'quantity',
  quantity: 'quantity',
  unit: 'unit',
  price: 'price',
  cost: 'cost',
  tax: 'tax',
  choice: 'taken',
  'choice.kind': 'taken',
  'choice.group': 'group',
  'choice.isStandard': 'standard',
};

/** The cell that shows a field of a line, as the API names it; the rest is told at what opens beside. */
export function cellOfField(field: string): LineCell {
  return CELL_OF[field] ?? 'details';
}

/** Errors of lines by line and cell. */
export type LineErrors = ReadonlyMap<string, ReadonlyMap<string, FieldMessage>>;

const OF_LINE = /^lines\.(\d+)\.(.+)$/;

/** The API's errors of lines at the lines they were sent for, wherever those stand by now. */
export function placedAtLines(
  errors: readonly FieldError[],
  sent: readonly { readonly id: string }[],
): readonly [string, LineCell, FieldMessage][] {
  return errors.flatMap((error): [string, LineCell, FieldMessage][] => {
    const [, at = '', field = ''] = OF_LINE.exec(error.field) ?? [];
    const line = at === '' ? undefined : sent[Number(at)];
    return line ? [[line.id, cellOfField(field), error]] : [];
  });
}

/** One map of what is to mend; of several at a cell the first is told. */
export function lineErrors(all: readonly (readonly [string, string, FieldMessage])[]): LineErrors {
  const errors = new Map<string, Map<string, FieldMessage>>();
  for (const [line, name, message] of all) {
    const ofLine = errors.get(line) ?? new Map<string, FieldMessage>();
    errors.set(line, ofLine);
    if (!ofLine.has(name)) ofLine.set(name, message);
  }
  return errors;
}
