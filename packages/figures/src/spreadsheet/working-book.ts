import { decimal } from '@scantling/decimals';
import { OPERATIONS } from '../operations/index.ts';
import { UnknownFigureError } from '../recalculation/index.ts';
import type { FigureNode, FigureTable } from '../table.ts';
import { allocationRows } from './allocation-rows.ts';
import { InputSheet } from './input-sheet.ts';
import { numberFormat, placesFormat } from './number-format.ts';
import type { CellRole, FormulaCell, WorkbookSheet } from './workbook.ts';
import { WORKING, WorkingSheet } from './working-sheet.ts';

/** Spreadsheets take 255 values and 8,192 letters in a formula; so few stay readable, and are far below both. */
const MOST_TERMS = 24;
/** What may be worked out part by part. */
const IN_PARTS = new Set(['sum', 'product', 'least', 'greatest']);
const MM_PER_INCH = 25.4;

interface CellOptions {
  readonly role?: CellRole;
  /** The unit's own where absent. */
  readonly format?: string;
}

/**
 * A table of figures as two sheets of formulas: `Inputs` with every leaf once, `Working` with everything derived from
 * them, a row each, inputs before what uses them. Sheets in front take their numbers from here by `cell`.
 */
export class WorkingBook {
  readonly #table: FigureTable;
  readonly #lengths: 'mm' | 'in';
  readonly #inputs: InputSheet;
  readonly #working = new WorkingSheet();
  /** What formulas of the working write for a figure: a name, a number or a cell. */
  readonly #written = new Map<string, string>();
  readonly #allocations = new Map<string, readonly string[]>();

  /**
   * @param table with derivations
   * @param lengths what lengths are entered and shown in
   */
  constructor(table: FigureTable, lengths: 'mm' | 'in' = 'mm') {
    this.#table = table;
    this.#lengths = lengths;
    this.#inputs = new InputSheet(table, lengths);
  }

  /** Puts the working of these figures under a heading of its own, as far as it does not stand further up. */
  section(title: string, ids: readonly string[]): void {
    this.#working.begin(title);
    for (const id of ids) this.#write(id);
  }

  node(id: string): FigureNode {
    const node = this.#table[id];
    // Neither a leaf nor derived: the table came without derivations.
    if (node === undefined || (node.how === undefined && node.source === undefined))
      throw new UnknownFigureError(id);
    return node;
  }

  /** The figure as a cell of a sheet in front: a formula that points into the working, never a bare number. */
  cell(id: string, { role = 'value', format }: CellOptions = {}): FormulaCell {
    const { unit, currency, label, value } = this.node(id);
    const formula = this.#fromOutside(id);
    if (unit === 'mm' && this.#lengths === 'in')
      return {
        kind: 'formula',
        formula: `${formula}/${MM_PER_INCH}`,
        value: decimal(value).div(MM_PER_INCH).toString(),
        format: format ?? placesFormat(3),
        role,
      };
    return {
      kind: 'formula',
      formula,
      value,
      format: format ?? numberFormat(unit, currency, label),
      role,
    };
  }

  sheets(): WorkbookSheet[] {
    return [this.#inputs.sheet(), this.#working.sheet()];
  }

  #fromOutside(id: string): string {
    const written = this.#write(id);
    return this.node(id).how === undefined ? written : `${WORKING}!${written}`;
  }

  #write(id: string): string {
    const known = this.#written.get(id);
    if (known !== undefined) return known;
    const node = this.node(id);
    const written = node.how === undefined ? this.#inputs.place(node) : this.#derive(node, node.how);
    this.#written.set(id, written);
    return written;
  }

  #derive(node: FigureNode, how: NonNullable<FigureNode['how']>): string {
    const { operation, settings = {} } = how;
    const inputs = how.inputs.map((id) => this.#write(id));
    const nodes = how.inputs.map((id) => this.node(id));
    const words = OPERATIONS[operation].phrase(
      nodes.map(({ label }) => label),
      settings,
    );
    if (operation === 'allocate') {
      const shares = this.#sharesOf(node, how.inputs, inputs, settings.currency ?? '');
      return this.#working.add({ ...node, formula: shares[Number(settings.share)] ?? '', words });
    }
    const terms = IN_PARTS.has(operation) ? this.#inParts(node, operation, inputs, nodes) : inputs;
    return this.#working.add({ ...node, formula: OPERATIONS[operation].formula(terms, settings), words });
  }

  /** Long sums and the like in rows of their own, again and again until the last formula is short. */
  #inParts(
    node: FigureNode,
    operation: NonNullable<FigureNode['how']>['operation'],
    inputs: readonly string[],
    nodes: readonly Pick<FigureNode, 'value'>[],
  ): readonly string[] {
    if (inputs.length <= MOST_TERMS) return inputs;
    const { formula, evaluate } = OPERATIONS[operation];
    const parts = Math.ceil(inputs.length / MOST_TERMS);
    const values: { value: string }[] = [];
    const cells = Array.from({ length: parts }, (_, part) => {
      const [from, to] = [part * MOST_TERMS, (part + 1) * MOST_TERMS];
      const value = evaluate(
        nodes.slice(from, to).map((one) => decimal(one.value)),
        {},
      ).toString();
      values.push({ value });
      return this.#working.add({
        ...node,
        label: `${node.label}, part ${part + 1} of ${parts}`,
        value,
        formula: formula(inputs.slice(from, to), {}),
        words: '',
      });
    });
    return this.#inParts(node, operation, cells, values);
  }

  /** The shares of an amount that is shared out by weights; its rows are made once for all of them. */
  #sharesOf(
    node: FigureNode,
    ids: readonly string[],
    inputs: readonly string[],
    currency: string,
  ): readonly string[] {
    const key = [currency, ...ids].join('\n');
    const known = this.#allocations.get(key);
    if (known !== undefined) return known;
    const made = allocationRows(this.#working, node, inputs, currency);
    this.#allocations.set(key, made);
    return made;
  }
}
