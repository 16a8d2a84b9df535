import { decimal } from '@scantling/decimals';
import type { FigureNode, FigureTable } from '../table.ts';
import { definedNames } from './defined-names.ts';
import { GROUP_OF, INPUT_GROUPS } from './group-inputs.ts';
import { numberFormat, placesFormat, unitLabel } from './number-format.ts';
import { text, type WorkbookRow, type WorkbookSheet } from './workbook.ts';

const MM_PER_INCH = 25.4;
const INCH_PLACES = 4;
/** A double holds 15 digits of any decimal; longer constants get a cell rather than a literal in a formula. */
const MOST_LITERAL_DIGITS = 15;

const HINT = [
  'Change a marked cell and every sheet follows. The other cells are protected against slips, without a password.',
  'Which offer is taken and which lines there are was settled in Scantling; a formula moves amounts, not such choices.',
];

/** A leaf of the workbook: its cell, and how formulas write it. */
interface PlacedInput {
  readonly node: FigureNode;
  readonly name: string;
  readonly isInInches: boolean;
}

/** Every leaf once, under where it came from, each with the name that formulas call it by. */
export class InputSheet {
  readonly #placed: PlacedInput[] = [];
  readonly #names: ReadonlyMap<string, string>;
  readonly #lengths: 'mm' | 'in';

  /**
   * @param table its leaves get their names together, so that a name does not depend on which is placed first
   * @param lengths what lengths are entered in; formulas always get millimetres
   */
  constructor(table: FigureTable, lengths: 'mm' | 'in') {
    const leaves = Object.values(table).filter((node) => node.how === undefined && !isBareNumber(node));
    // By key, since a table that was stored comes back in another order.
    leaves.sort((a, b) => (a.id < b.id ? -1 : 1));
    this.#names = definedNames(leaves.map(({ id, label }) => ({ label, key: id })));
    this.#lengths = lengths;
  }

  /** Gives the leaf a cell and answers what formulas write for it. A bare number by definition is written itself. */
  place(node: FigureNode): string {
    if (isBareNumber(node)) return node.value.startsWith('-') ? `(${node.value})` : node.value;
    const isInInches = this.#lengths === 'in' && node.unit === 'mm' && node.source?.kind !== 'definition';
    const name = this.#names.get(node.id) ?? '';
    this.#placed.push({ node, name, isInInches });
    return isInInches ? `(${name}*${MM_PER_INCH})` : name;
  }

  sheet(): WorkbookSheet {
    const head = ['Input', 'Value', 'Unit', 'Name in formulas', 'Where it comes from', 'Remark'];
    return {
      name: 'Inputs',
      widths: [52, 16, 14, 42, 62, 34],
      headRows: 4,
      headColumns: 2,
      rows: [
        [text('Inputs', 'title')],
        ...HINT.map((line) => [text(line, 'fact')]),
        head.map((title) => text(title, title === 'Value' ? 'number-head' : 'column-head')),
        ...INPUT_GROUPS.flatMap((group) => {
          const rows = this.#placed.filter(({ node }) => group === groupOf(node)).map(inputRow);
          return rows.length === 0 ? [] : [[text(group, 'heading')], ...rows];
        }),
      ],
    };
  }
}

function groupOf({ source }: FigureNode) {
  return GROUP_OF[source?.kind ?? 'entered'];
}

function isBareNumber({ source, label, value }: FigureNode): boolean {
  const digits = value.replace(/[-.]/g, '').length;
  return source?.kind === 'definition' && label === value && digits <= MOST_LITERAL_DIGITS;
}

function inputRow({ node, name, isInInches }: PlacedInput): WorkbookRow {
  const { label, unit, currency, source, note = '' } = node;
  const value = isInInches ? decimal(node.value).div(MM_PER_INCH).toString() : node.value;
  return [
    text(label, 'label'),
    {
      kind: 'number',
      value,
      format: isInInches ? placesFormat(INCH_PLACES) : numberFormat(unit, currency, label),
      role: source?.kind === 'definition' ? 'value' : 'input',
      name,
    },
    text(isInInches ? 'in' : unitLabel(unit, currency, label), 'unit'),
    text(name, 'remark'),
    text(source?.text ?? '', 'remark'),
    text(note, 'remark'),
  ];
}
