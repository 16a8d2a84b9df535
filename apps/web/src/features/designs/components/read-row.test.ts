import { exampleBill } from '@scantling/contracts';
import type { Bill, Part } from '@scantling/costing';
import { parseLength } from '@scantling/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthText } from '../../../lib/length-text.ts';
import { BILL_FIELDS, BILL_KINDS } from './bill-fields.ts';
import { furtherText, rowCells } from './bill-text.ts';
import { readRow } from './read-row.ts';

const LIPPED: Part = {
  id: 'door',
  name: 'Door',
  assembly: 'carcase',
  quantity: 2,
  material: 'PLY-18',
  length: '600.075',
  width: '320.000001',
  thickness: '18',
  grain: 'any',
  lengthAllowance: '0',
  isResawn: true,
  edgeBand: { material: 'BAND-1', thickness: '1', longEdges: 2, endEdges: 0 },
  veneer: { material: 'VEN-06', thickness: '0.6', faces: 2 },
  facesFinished: 'both-faces',
  spares: 1,
  rejectShare: '0.05',
};
const BILL: Bill = {
  ...exampleBill,
  assemblies: [{ id: 'carcase', name: 'Carcase', quantity: 1 }],
  parts: [...exampleBill.parts, LIPPED],
  consumables: [{ id: 'glue', name: 'Glue', material: 'GLUE', quantity: '0.12', per: 'batch' }],
};

describe('a row in its form', () => {
  it.each(['metric', 'imperial'] as const)('reads back exactly as it was kept, %s', (system) => {
    for (const kind of BILL_KINDS) {
      for (const row of BILL[kind]) {
        const read = readRow(kind, rowCells(row, BILL_FIELDS[kind], system), system);
        expect(read.errors).toEqual([]);
        expect(read.bill?.[kind]).toEqual([row]);
      }
    }
  });

  it('reads lengths as people write them', () => {
    const draft = rowCells(LIPPED, BILL_FIELDS.parts, 'imperial');
    const { bill } = readRow(
      'parts',
      { ...draft, length: `1' 11 5/8"`, width: '3/4', thickness: '18 mm' },
      'imperial',
    );
    expect(bill?.parts[0]).toMatchObject({ length: '600.075', width: '19.05', thickness: '18' });
  });

  it('names every value that cannot be read', () => {
    const draft = {
      ...rowCells(LIPPED, BILL_FIELDS.parts, 'metric'),
      name: ' ',
      quantity: 'two',
      width: '1,250',
    };
    const { errors } = readRow('parts', draft, 'metric');
    expect(errors.map(({ field }) => field)).toEqual(['name', 'quantity', 'width']);
  });

  it('names what the rules of the API refuse', () => {
    const draft = {
      ...rowCells(LIPPED, BILL_FIELDS.parts, 'metric'),
      rejectShare: '120',
      'veneer.material': '',
    };
    const { errors } = readRow('parts', draft, 'metric');
    expect(errors.map(({ field }) => field).toSorted()).toEqual(['rejectShare', 'veneer.material']);
  });

  it('types back any length without loss', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2 ** 31 - 1 }),
        fc.constantFrom('metric' as const, 'imperial' as const),
        (millionths, system) => {
          const mm = (BigInt(millionths) / 1_000_000n).toString();
          const rest = (millionths % 1_000_000).toString().padStart(6, '0').replace(/0+$/, '');
          const length = rest === '' ? mm : `${mm}.${rest}`;
          const unit = system === 'metric' ? 'mm' : 'in';
          expect(parseLength(lengthText(length, system), unit).toFixed()).toBe(length);
        },
      ),
    );
  });
});

it('says in words what has no column', () => {
  const cells = rowCells(LIPPED, BILL_FIELDS.parts, 'metric');
  const text = furtherText(cells, BILL_FIELDS.parts, 'metric');
  expect(text).toContain('Resawn from thicker stock; Band material BAND-1; Band thickness 1 mm');
  expect(text).toContain('Rejects 5 %');
});
