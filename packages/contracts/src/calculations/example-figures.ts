import {
  derive,
  divide,
  entered,
  input,
  number,
  roundMoney,
  scale,
  sum,
  times,
  toTable,
} from '@scantling/figures';

const money = (key: string, label: string, value: string) =>
  input({ key, label, unit: 'money', value, currency: 'EUR', source: entered() });

function shelf() {
  const hours = (key: string, value: string) =>
    input({ key: `work/${key}`, label: `work, ${key}`, unit: 'h', value, source: entered() });
  const time = divide(
    'hours of work, mean',
    sum('low, 4 times likely and high', 'h', [
      hours('low', '5'),
      scale('4 times the likely hours', hours('likely', '8'), number(4)),
      hours('high', '14'),
    ]),
    number(6),
  );
  const rate = input({
    key: 'pay',
    label: 'an hour of work',
    unit: 'money/h',
    value: '38',
    currency: 'EUR',
    source: entered(),
  });
  const boards = input({ key: 'ash/boards', label: 'ash', unit: 'each', value: '6', source: entered() });
  const timber = derive('timber', 'money', 'product', [money('ash/price', 'a board of ash', '12'), boards]);
  const cost = sum('cost of production', 'money', [times('labour', rate, time), timber]);
  const price = roundMoney('price', scale('cost and markup', cost, number('1.3')));
  return { cost, price };
}

/** A shelf of boards and hours, for the API's description. Invented. */
export const exampleFigures = toTable(shelf(), { withDerivations: true }).figures;
