import type { Choice } from '../../../components/choice-list.tsx';
import {
  type CellReading,
  choiceNamed,
  type EditColumn,
  type GridRow,
} from '../../../components/edit-grid/edit-column.ts';
import { readYesNo } from '../../../components/edit-grid/read-yes-no.ts';
import type { FieldMessage } from '../../../components/field.tsx';
import { plainDecimal } from '../../../lib/percent.ts';
import { cell, DELIVERY, isFromSheet, OWN_LINE } from './line-cells.ts';
import type { Drawn, LineFigures } from './line-figures.tsx';
import { costFault, piecesFault, priceFault, quantityFault } from './line-problems.ts';
import type { QuoteForm } from './quote-form.ts';

export const TAKEN: readonly Choice[] = [
  { id: 'included', label: 'always' },
  { id: 'option', label: 'option', note: 'if the client wants it' },
  { id: 'alternate', label: 'one of a group', note: 'the client takes one' },
];

interface Named {
  readonly id: string;
  readonly label: string;
  readonly note: string;
}

/** Where a line can come from; sheets of one title are told apart, since a title names one when it is pasted. */
export function originChoices(sheets: readonly Named[]): readonly Choice[] {
  const own: readonly Choice[] = [
    { id: OWN_LINE, label: 'own line', note: 'with a price of its own' },
    { id: DELIVERY, label: 'delivery' },
  ];
  const taken = new Map<string, number>(own.map(({ label }) => [label, 1]));
  const named = sheets.map(({ id, label, note }): Choice => {
    const count = (taken.get(label.toLowerCase()) ?? 0) + 1;
    taken.set(label.toLowerCase(), count);
    return { id, label: count === 1 ? label : `${label} (${count})`, note: `cost sheet of ${note}` };
  });
  return [...own, ...named];
}

const chosen =
  (choices: readonly Choice[]) =>
  (text: string): CellReading => ({ text: choiceNamed(choices, text) ?? text });

const number =
  (faultOf: (text: string) => FieldMessage | null) =>
  (text: string): CellReading => {
    const error = faultOf(text);
    return error ? { error } : { text: plainDecimal(text) };
  };

const asTyped = (text: string): CellReading => ({ text });

interface ColumnsOf {
  readonly form: Pick<QuoteForm, 'currency' | 'priceMode' | 'taxes'>;
  readonly origins: readonly Choice[];
  /** Some line is one of a group. */
  readonly hasGroups: boolean;
  /** What opens beside, in a few words. */
  readonly further: Drawn;
  /** What the lines come to, cost and leave. */
  readonly figures: LineFigures;
}

const isDelivery = (row: GridRow): boolean => cell(row, 'from') === DELIVERY;
const isOfGroup = (row: GridRow): boolean => cell(row, 'taken') === 'alternate';

/** The column where rows have a use for it; in the others it says what is known, or nothing. */
function where(
  column: EditColumn,
  hasUse: (row: GridRow) => boolean,
  others: (row: GridRow) => Partial<EditColumn> = () => ({}),
): EditColumn {
  const inRow = (row: GridRow | undefined): EditColumn =>
    row === undefined || hasUse(row) ? column : { ...column, kind: 'worked', ...others(row) };
  return { ...column, inRow };
}

const text = (id: string, header: string, width: number): EditColumn => ({
  id,
  header,
  width,
  kind: 'text',
  read: asTyped,
});

const numeric = (column: EditColumn, faultOf: (typed: string) => FieldMessage | null): EditColumn => ({
  ...column,
  isNumeric: true,
  read: number(faultOf),
});

function quantityColumn(): EditColumn {
  const column = numeric(text('quantity', 'Number', 76), quantityFault);
  const pieces = numeric(column, piecesFault);
  return {
    ...column,
    inRow: (row) => {
      if (row && isDelivery(row)) return { ...column, kind: 'worked' };
      return row && isFromSheet(row) ? pieces : column;
    },
  };
}

/** The columns of a quote's lines. */
export function lineColumns({
  form,
  origins,
  hasGroups,
  further,
  figures,
}: ColumnsOf): readonly EditColumn[] {
  const { currency, priceMode } = form;
  const taxes = form.taxes.map(({ id, name }) => ({ id, label: name || id }));
  const isOwn = (row: GridRow): boolean => !isFromSheet(row);
  const price = text('price', `${priceMode === 'inclusive' ? 'Gross' : 'Net'} price, ${currency}`, 124);
  const cost = text('cost', `Cost of line, ${currency}`, 124);
  return [
    text('description', 'Line', 220),
    quantityColumn(),
    where(text('unit', 'Unit', 64), (row) => isOwn(row) && !isDelivery(row)),
    where(numeric(price, priceFault), isOwn, () => figures.price),
    { ...text('amount', `Amount, ${currency}`, 116), isNumeric: true, kind: 'worked', ...figures.amount },
    { ...text('from', 'Made from', 150), kind: 'choice', choices: origins, read: chosen(origins) },
    { ...text('tax', 'Tax', 112), kind: 'choice', choices: taxes, read: chosen(taxes) },
    { ...text('taken', 'Taken', 112), kind: 'choice', choices: TAKEN, read: chosen(TAKEN) },
    ...(hasGroups
      ? [
          where(text('group', 'Group', 92), isOfGroup),
          where({ ...text('standard', 'Standard', 88), kind: 'yes-no', read: readYesNo }, isOfGroup),
        ]
      : []),
    where(numeric(cost, costFault), isOwn, () => figures.cost),
    { ...text('margin', 'Margin', 76), isNumeric: true, kind: 'worked', ...figures.margin },
    {
      ...text('details', 'Words and pictures', 180),
      kind: 'details',
      ...further,
    },
  ];
}
