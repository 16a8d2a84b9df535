import { decimal } from '@scantling/decimals';
import {
  commonPractice,
  complement,
  divide,
  type Figure,
  FigureTableBuilder,
  input,
  number,
  roundMoney,
  scale,
  sum,
  times,
} from '@scantling/figures';

/** An invented bench in an invented workshop, worked out with real figures. */
const oakPrice = input({
  key: 'price/oak-8-4',
  label: 'White oak 8/4, select',
  unit: 'money/bd ft',
  value: '11.4',
  currency: 'USD',
  source: {
    kind: 'price-list',
    text: 'Alder & Wray (invented), list of 2026-03-01, line 41 (RO-84)',
    record: 'price-line:41',
  },
});
const labourRate = input({
  key: 'rate/bench',
  label: 'Labour rate, bench work',
  unit: 'money/h',
  value: '46.153846',
  currency: 'USD',
  source: { kind: 'shop-rate', text: 'Labour & overhead, grade "bench", planned 2026' },
});
const waste = input({
  key: 'waste/oak',
  label: 'Waste, of what is bought',
  unit: 'ratio',
  value: '0.22',
  source: commonPractice('hardwood, random widths'),
});

const PARTS = [
  ['Legs, turned', '4.75', '3.5'],
  ['Seat rails', '3.1', '1.25'],
  ['Seat, glued up', '8.4', '2.75'],
  ['Stretchers', '2.2', '1'],
] as const;

export interface CostLine {
  readonly name: string;
  readonly quantity: string;
  readonly timber: string;
  readonly hours: string;
  readonly labour: string;
  readonly cost: string;
}

function partFigures([name, boardFeet, hours]: (typeof PARTS)[number]) {
  const rough = input({
    key: `need/${name}`,
    label: `${name}: rough need`,
    unit: 'bd ft',
    value: boardFeet,
    source: { kind: 'bill-of-materials', text: `Hall bench, revision C, ${name}` },
  });
  const bought = divide(`${name}: bought`, rough, complement('Yield', waste));
  const time = input({
    key: `hours/${name}`,
    label: `${name}: time`,
    unit: 'h',
    value: hours,
    source: { kind: 'measured-time', text: 'Mean of three earlier builds' },
  });
  const timber = times(`${name}: timber`, oakPrice, bought);
  const labour = times(`${name}: labour`, labourRate, time);
  return { rough, bought, time, timber, labour };
}

const builder = new FigureTableBuilder({ withDerivations: true });
const costs: Figure<'money'>[] = [];

/** The lines of the table; their texts are ids of figures. */
export const COST_LINES: readonly CostLine[] = PARTS.map((part) => {
  const { bought, time, timber, labour } = partFigures(part);
  const cost = sum(`${part[0]}: prime cost`, 'money', [timber, labour]);
  costs.push(cost);
  return {
    name: part[0],
    quantity: builder.add(`${part[0]}/bought`, bought),
    timber: builder.add(`${part[0]}/timber`, timber),
    hours: builder.add(`${part[0]}/hours`, time),
    labour: builder.add(`${part[0]}/labour`, labour),
    cost: builder.add(`${part[0]}/cost`, cost),
  };
});

const prime = sum('Prime cost', 'money', costs);
export const PRIME_COST = builder.add('prime-cost', prime);
export const PRICE = builder.add(
  'price',
  roundMoney('Price of one bench', scale('Prime cost with markup', prime, number('1.65', 'Markup 65 %'))),
);
export const COST_TABLE = builder.table();

/** 5,000 invented price lines, to see a long table. */
export const LONG_LIST = Array.from({ length: 5000 }, (_, at) => ({
  code: `RO-${at + 1}`,
  material: ['White oak 4/4', 'Ash 8/4', 'Birch plywood 18 mm', 'Brass screw 4 x 40'][at % 4] ?? '',
  price: decimal(((at * 7919) % 9973) + 25)
    .div(100)
    .toFixed(2),
}));
