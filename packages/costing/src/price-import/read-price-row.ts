import { type PricingUnitId, readPricingUnit, UnknownPricingUnitError } from '@scantling/units';
import { BREAK_KINDS, type BreakKind } from '../price-list/price-offer.ts';
import type { PriceColumn } from './price-columns.ts';
import type { ColumnPlaces } from './price-mapping.ts';
import type { PriceRow, RowProblem } from './price-row.ts';
import { readNumber } from './read-number.ts';

export interface PriceRowContext {
  readonly places: ColumnPlaces;
  readonly decimalMark: 'point' | 'comma';
  /** The unit of every row, for files that do not say it. */
  readonly unit?: PricingUnitId | undefined;
  readonly isMaterial: (code: string) => boolean;
}

export type ReadPriceRow = { readonly row: PriceRow } | { readonly problems: readonly RowProblem[] };

// Prices are kept with 12 digits before and 6 after the point: more would be cut off without a word.
const STORABLE = /^\d{1,12}(?:\.\d{1,6})?$/;
// Control characters say nothing in a price list; a database refuses some of them.
const CONTROL = /\p{Cc}+/gu;
const MOST_LETTERS = { code: 100, description: 500 } as const;

/** Reads one row; every problem in it is named at once. */
export function readPriceRow(cells: readonly string[], context: PriceRowContext): ReadPriceRow {
  const problems: RowProblem[] = [];
  const reader = new RowReader(cells, context, problems);
  const code = reader.text('code');
  if (code === '')
    problems.push({ column: 'code', message: 'is empty', mend: "Give the supplier's code of the article." });
  const unit = reader.unit();
  const amount = reader.number('price', { isNeeded: true });
  const from = reader.number('from');
  const packSize = reader.number('pack', { isPositive: true });
  const minimumQuantity = reader.number('minimum');
  const leadDays = reader.days();
  const breakKind = reader.breakKind();
  const material = reader.material();
  const description = reader.text('description');
  if (problems.length > 0 || unit === undefined || amount === undefined) return { problems };
  return {
    row: {
      code,
      description,
      ...(material === '' ? {} : { material }),
      unit,
      amount,
      from: from ?? '0',
      breakKind,
      ...(packSize === undefined ? {} : { packSize }),
      ...(minimumQuantity === undefined ? {} : { minimumQuantity }),
      ...(leadDays === undefined ? {} : { leadDays }),
    },
  };
}

class RowReader {
  constructor(
    private readonly cells: readonly string[],
    private readonly context: PriceRowContext,
    private readonly problems: RowProblem[],
  ) {}

  cell(column: PriceColumn): string {
    const place = this.context.places.get(column);
    return place === undefined ? '' : (this.cells[place] ?? '').replace(CONTROL, ' ').trim();
  }

  text(column: 'code' | 'description'): string {
    const text = this.cell(column).replace(/\s+/g, ' ');
    if (text.length > MOST_LETTERS[column])
      this.refuse(column, `has more than ${MOST_LETTERS[column]} letters`, 'Shorten it.');
    return text;
  }

  unit(): PricingUnitId | undefined {
    const text = this.cell('unit');
    if (text === '') {
      if (this.context.unit === undefined)
        this.refuse('unit', 'is empty', 'Say what the price is per, such as "bd ft" or "m2".');
      return this.context.unit;
    }
    try {
      return readPricingUnit(text).id;
    } catch (error) {
      if (!(error instanceof UnknownPricingUnitError)) throw error;
      this.refuse(
        'unit',
        `"${text}" is no unit a price can be per`,
        'Use one such as bd ft, m3, m2, sheet, each, pack, l or kg.',
      );
      return undefined;
    }
  }

  number(column: PriceColumn, rules: { isNeeded?: boolean; isPositive?: boolean } = {}): string | undefined {
    const text = this.cell(column);
    if (text === '') {
      if (rules.isNeeded) this.refuse(column, 'is empty', 'Give the price as a number.');
      return undefined;
    }
    const read = readNumber(text, this.context.decimalMark);
    const example = this.context.decimalMark === 'point' ? '1250.50' : '1250,50';
    if (read === null)
      this.refuse(column, `"${text}" is no number of 0 or more`, `Write it as digits, such as ${example}.`);
    else if (!STORABLE.test(read))
      this.refuse(column, `"${text}" has too many digits`, 'Use at most 12 digits and 6 decimal places.');
    else if (rules.isPositive && read === '0')
      this.refuse(column, 'is 0', 'Give a number above 0, or leave it empty.');
    else return read;
    return undefined;
  }

  days(): number | undefined {
    const text = this.cell('lead days');
    if (text === '') return undefined;
    const digits = /^(\d{1,4})(?:\s*(?:d|days?))?$/i.exec(text)?.[1];
    if (digits !== undefined) return Number(digits);
    this.refuse('lead days', `"${text}" is no number of days`, 'Write whole days, such as 14.');
    return undefined;
  }

  breakKind(): BreakKind {
    const text = this.cell('break kind')
      .toLowerCase()
      .replace(/[\s_]+/g, '-');
    const kind = text === '' ? 'all-units' : BREAK_KINDS.find((known) => known === text);
    if (kind === undefined)
      this.refuse('break kind', `"${text}" is no kind of break`, 'Write all-units or incremental.');
    return kind ?? 'all-units';
  }

  material(): string {
    const code = this.cell('material');
    if (code !== '' && !this.context.isMaterial(code))
      this.refuse(
        'material',
        `there is no material "${code}"`,
        'Use the code of a material, or enter the material first.',
      );
    return code;
  }

  private refuse(column: PriceColumn, message: string, mend: string): void {
    this.problems.push({ column, message, mend });
  }
}
