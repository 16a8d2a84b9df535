import type { WorkedCostSheet } from '@scantling/contracts';
import { text, unitLabel, type WorkingBook } from '@scantling/figures';
import { columnHeads } from './sheet-head.ts';
import { TableSheet } from './table-sheet.ts';

/** What is made: the parameters it is worked out for, the parts with their rough sizes, and the weight of a piece. */
export function partSheet(
  book: WorkingBook,
  { parts, parameters, weight }: WorkedCostSheet,
  title: string,
  lengths: 'mm' | 'in',
) {
  const head = [
    [text(`${title}: parts`, 'title')],
    columnHeads('Part', 'Stock', `>Rough length, ${lengths}`, `>Rough width, ${lengths}`, '>Rough face', ''),
  ];
  const sheet = new TableSheet(head, null);
  const unitOf = (id: string) => {
    const { unit, currency, label } = book.node(id);
    const isInInches = unit === 'mm' && lengths === 'in';
    return text(isInInches ? 'in' : unitLabel(unit, currency, label), 'unit');
  };
  for (const part of parts)
    sheet.add(
      text(part.name, 'label'),
      text(part.stock, 'unit'),
      book.cell(part.roughLength),
      book.cell(part.roughWidth),
      book.cell(part.roughFace),
      unitOf(part.roughFace),
    );
  if (parameters.length > 0) sheet.begin('Worked out for');
  for (const { label, value, material } of parameters)
    sheet.add(
      text(label, 'label'),
      text(material ?? '', 'unit'),
      value === null ? null : book.cell(value),
      value === null ? null : unitOf(value),
    );
  sheet.begin('Weight');
  sheet.add(text('One piece', 'label'), null, book.cell(weight.mass), unitOf(weight.mass));
  for (const part of weight.partsWithoutDensity)
    sheet.add(text(`Left out, density not known: ${part}`, 'warning'));
  return sheet.sheet({ name: 'Parts', widths: [44, 20, 16, 16, 14, 10], headRows: head.length });
}
