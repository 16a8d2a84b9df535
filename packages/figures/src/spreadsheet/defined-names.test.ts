import { expect, it } from 'vitest';
import { definedNames } from './defined-names.ts';

const namesOf = (...labels: readonly string[]) => [
  ...definedNames(labels.map((label, at) => ({ label, key: `leaf/${at}` }))).values(),
];

it.each([
  ['Ash 4/4: price per bd ft', 'Ash_4_4_price_per_bd_ft'],
  ['Länge über alles (Ø 40 mm)', 'Lange_uber_alles_O_40_mm'],
  ['4 in', 'value_4_in'],
  ['12 % & more', 'value_12_percent_and_more'],
  ['榫卯', 'input'],
  ['  ', 'input'],
  // Names that would be read as cells (ECMA-376 part 1, 18.17.2.3: A1 and R1C1 notation).
  ['ASH4', 'ASH4_'],
  ['xfd1048576', 'xfd1048576_'],
  ['R', 'R_'],
  ['c', 'c_'],
  ['R1C1', 'R1C1_'],
  ['TRUE', 'TRUE_'],
  ['print area', 'print_area_'],
  ['constructor', 'constructor_'],
  ['__proto__', 'proto'],
  ['=HYPERLINK("http://x","y")', 'HYPERLINK_http_x_y'],
])('calls %j %s', (label, name) => {
  expect(namesOf(label)).toEqual([name]);
});

it('tells cells that are called the same apart by their keys', () => {
  const cells = [
    { label: 'pieces', key: 'quantity/1' },
    { label: 'pieces', key: 'quantity/10' },
    { label: 'Oak: price', key: 'price/yard/O4/board-foot/0' },
    { label: 'oak price', key: 'price/mill/O4/board-foot/0' },
  ];
  expect([...definedNames(cells).values()]).toEqual([
    'pieces_1',
    'pieces_10',
    'Oak_price_yard_O4_board_foot_0',
    'oak_price_mill_O4_board_foot_0',
  ]);
});

it('gives many cells of one label different valid names, also where their keys say nothing', () => {
  const label = 'A very long name of a part that somebody pasted out of a letter, with everything in it';
  const cells = Array.from({ length: 3000 }, (_, at) => ({ label, key: `öäü ${'§'.repeat(at + 1)}` }));
  const names = [...definedNames(cells).values()];
  expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(3000);
  expect(names.filter((name) => !/^[A-Za-z]\w{0,120}$/.test(name))).toEqual([]);
});
