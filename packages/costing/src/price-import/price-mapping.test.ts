import { describe, expect, it } from 'vitest';
import { PRICE_COLUMNS } from './price-columns.ts';
import { findHeaderRow, guessPriceMapping, missingColumns, placeColumns } from './price-mapping.ts';

describe('the mapping of a price file', () => {
  it('knows every column of our own files', () => {
    expect(Object.keys(guessPriceMapping(PRICE_COLUMNS).columns)).toEqual([...PRICE_COLUMNS]);
  });

  it('guesses what suppliers call them and gives no header twice', () => {
    const headers = ['Item No.', 'Product', 'Unit Price (EUR)', 'UoM', 'Colour', 'MOQ'];
    expect(guessPriceMapping(headers).columns).toEqual({
      code: 'Item No.',
      description: 'Product',
      price: 'Unit Price (EUR)',
      unit: 'UoM',
      minimum: 'MOQ',
    });
  });

  it('reads past the currency beside a price, and German headers', () => {
    const headers = ['Artikel', 'Bezeichnung', 'Einheit', 'Preis EUR'];
    expect(guessPriceMapping(headers).columns).toEqual({
      code: 'Artikel',
      description: 'Bezeichnung',
      unit: 'Einheit',
      price: 'Preis EUR',
    });
    expect(guessPriceMapping(['SKU', 'USD/unit price']).columns.price).toBe('USD/unit price');
  });

  it('finds remembered headers where they moved to, and says what is missing', () => {
    const mapping = { columns: { code: 'Nr', price: 'Netto' } };
    expect([...placeColumns(mapping, ['netto', 'x', 'NR'])]).toEqual([
      ['code', 2],
      ['price', 0],
    ]);
    expect(missingColumns(mapping, ['nr', 'netto'])).toEqual(['unit']);
    expect(missingColumns({ ...mapping, unit: 'sheet' }, ['nr', 'brutto'])).toEqual(['price']);
  });

  it('finds headers below a title', () => {
    const rows = [
      ['Price list'],
      ['valid from', '2026-03-01'],
      ['Code', 'Price', 'Unit'],
      ['A', '1', 'each'],
    ];
    expect(findHeaderRow(rows, undefined)).toBe(2);
    expect(findHeaderRow([['a', 'b']], undefined)).toBe(0);
    const remembered = { columns: { code: 'K', price: 'P' }, unit: 'each' } as const;
    expect(findHeaderRow([['x'], ['K', 'P']], remembered)).toBe(1);
  });
});
