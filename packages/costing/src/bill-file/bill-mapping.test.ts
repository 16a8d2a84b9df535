import { describe, expect, it } from 'vitest';
import { BILL_COLUMNS } from './bill-columns.ts';
import {
  chooseBillMapping,
  findBillHeaders,
  guessBillMapping,
  missingBillColumns,
  placeBillColumns,
} from './bill-mapping.ts';

describe('matching the columns of a bill file', () => {
  it('knows its own headers whatever their case and spacing', () => {
    const headers = BILL_COLUMNS.map((column) => column.toUpperCase().replaceAll(' ', '_'));
    const places = placeBillColumns(guessBillMapping(headers), headers);
    expect([...places.keys()]).toEqual([...BILL_COLUMNS]);
    expect([...places.values()]).toEqual(BILL_COLUMNS.map((_, place) => place));
  });

  it('guesses what drawing programs call them, own names first, units in brackets left out', () => {
    const headers = ['Part No', 'Description', 'Qty', 'Length (mm)', 'W', 'T', 'Material', 'Name', 'Colour'];
    expect(guessBillMapping(headers).columns).toEqual({
      id: 'Part No',
      name: 'Name',
      quantity: 'Qty',
      material: 'Material',
      length: 'Length (mm)',
      width: 'W',
      thickness: 'T',
    });
  });

  it('says what is missing, less where all rows are of one kind', () => {
    const headers = ['id', 'name', 'coats', 'material'];
    expect(missingBillColumns(guessBillMapping(headers), headers)).toEqual(['row']);
    const finishes = { ...guessBillMapping(headers), rowKind: 'finish' } as const;
    expect(missingBillColumns(finishes, headers)).toEqual([]);
    expect(missingBillColumns({ ...finishes, rowKind: 'part' }, headers)).toEqual([
      'quantity',
      'length',
      'width',
      'thickness',
    ]);
  });

  it('uses a mapping that was kept where the file has all its headers, and guesses the rest', () => {
    const kept = { columns: { row: 'Art', id: 'Nr', name: 'Teil' } } as const;
    expect(chooseBillMapping(['Teil', 'Nr', 'Art', 'Qty'], kept).columns).toEqual({
      ...kept.columns,
      quantity: 'Qty',
    });
    expect(chooseBillMapping(['row', 'id', 'name'], kept).columns).toEqual({
      row: 'row',
      id: 'id',
      name: 'name',
    });
    expect(chooseBillMapping(['Nr', 'Teil'], kept).columns).toEqual({});
    const parts = { columns: { id: 'Nr' }, rowKind: 'part' } as const;
    expect(chooseBillMapping(['Nr'], parts)).toEqual({ columns: {} });
  });

  it('finds the headers below a title', () => {
    const rows = [['Hall bench, sheet 2'], ['drawn', '2026-01-05'], ['row', 'id', 'name', 'quantity']];
    expect(findBillHeaders(rows, undefined)).toBe(2);
    expect(findBillHeaders([['a'], ['b']], undefined)).toBe(0);
  });
});
