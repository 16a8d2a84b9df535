import { expect, it } from 'vitest';
import * as f from '../derive.ts';
import { input } from '../input.ts';
import { prepareTable } from '../recalculation/index.ts';
import { entered } from '../source.ts';
import { toTable } from '../table.ts';
import { findThreePoints } from './index.ts';

const hours = (key: string, value: string) => input({ key, label: key, unit: 'h', value, source: entered() });
const meanOf = (name: string, low: string, likely: string, high: string, six = 6) =>
  f.divide(
    `${name} mean`,
    f.sum('sum', 'h', [
      hours(`${name}/low`, low),
      f.scale('four', hours(`${name}/likely`, likely), f.number(4)),
      hours(`${name}/high`, high),
    ]),
    f.number(six),
  );

it('finds the means of three points, and nothing that only looks like one', () => {
  const figures = {
    a: meanOf('a', '5', '8', '14'),
    b: meanOf('b', '1', '2', '3'),
    c: meanOf('c', '1', '2', '3', 5),
  };
  const upsideDown = { d: meanOf('d', '9', '2', '3') };
  const { ids, figures: table } = toTable({ ...figures, ...upsideDown }, { withDerivations: true });
  const prepared = prepareTable(table);
  const idOf = (place: number) => prepared.figures[place]?.node.id;
  expect(
    findThreePoints(prepared)
      .map(({ mean, low, likely, high }) => [mean, low, likely, high].map(idOf))
      .sort(),
  ).toEqual([
    [ids.a, 'a/low', 'a/likely', 'a/high'],
    [ids.b, 'b/low', 'b/likely', 'b/high'],
  ]);
});
