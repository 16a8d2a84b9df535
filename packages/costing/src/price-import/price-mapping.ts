import { isCurrency } from '@scantling/money';
import type { PricingUnitId } from '@scantling/units';
import { findHeaders } from '../header-row.ts';
import { bareHeader, HEADER_WORDS, PRICE_COLUMNS, type PriceColumn } from './price-columns.ts';

/** Which header of a file holds which column, by the header's text, so that moved columns are found again. */
export interface PriceMapping {
  readonly columns: Readonly<Partial<Record<PriceColumn, string>>>;
  /** The unit of every row, for files that do not say it. */
  readonly unit?: PricingUnitId;
}

/** Where each mapped column stands in a row, counted from 0. */
export type ColumnPlaces = ReadonlyMap<PriceColumn, number>;

/** "Price EUR", "EUR/unit price" and "Price (net)" are headers of a price; € and $ are dropped as no letters. */
function withoutCurrency(header: string): string {
  return header
    .replace(/\(.*?\)/g, '')
    .split(/[\s/]+/)
    .filter((word) => !isCurrency(word.toUpperCase()))
    .join(' ');
}

/** What the headers look like; a column whose header says nothing known is left open. */
export function guessPriceMapping(headers: readonly string[]): PriceMapping {
  const bare = headers.map((header) => bareHeader(withoutCurrency(header)));
  const taken = new Set<number>();
  const columns: Partial<Record<PriceColumn, string>> = {};
  for (const column of PRICE_COLUMNS) {
    for (const word of HEADER_WORDS[column]) {
      const place = bare.indexOf(bareHeader(word));
      const header = headers[place];
      if (header === undefined || taken.has(place)) continue;
      taken.add(place);
      columns[column] = header;
      break;
    }
  }
  return { columns };
}

/** The places of the mapped columns whose header the file has. */
export function placeColumns(mapping: PriceMapping, headers: readonly string[]): ColumnPlaces {
  const bare = headers.map(bareHeader);
  const places = new Map<PriceColumn, number>();
  for (const column of PRICE_COLUMNS) {
    const header = mapping.columns[column];
    const place = header === undefined ? -1 : bare.indexOf(bareHeader(header));
    if (place >= 0) places.set(column, place);
  }
  return places;
}

/** The columns without which no row can be read and which the mapping does not find in the file. */
export function missingColumns(mapping: PriceMapping, headers: readonly string[]): PriceColumn[] {
  const places = placeColumns(mapping, headers);
  const needed: PriceColumn[] = mapping.unit === undefined ? ['code', 'unit', 'price'] : ['code', 'price'];
  return needed.filter((column) => !places.has(column));
}

/**
 * The row that holds the headers: titles and dates may stand above it.
 * @param rows the first rows of the file
 * @returns its index
 */
export function findHeaderRow(
  rows: readonly (readonly string[])[],
  remembered: PriceMapping | undefined,
): number {
  const fits = (cells: readonly string[]) => {
    if (remembered && missingColumns(remembered, cells).length === 0) return true;
    const { columns } = guessPriceMapping(cells);
    return columns.code !== undefined && columns.price !== undefined;
  };
  return findHeaders(rows, fits);
}
