import * as f from '../derive.ts';
import { input } from '../input.ts';
import { entered } from '../source.ts';
import type { FigureTable } from '../table.ts';
import { toTable } from '../table.ts';

const money = (key: string, value: string) =>
  input({ key, label: key, unit: 'money', value, currency: 'EUR', source: entered() });
const ratio = (key: string, value: string) =>
  input({ key, label: key, unit: 'ratio', value, source: entered() });

/**
 * Screws in packs, a board by its yield, and a price by margin:
 * cost = packs(screws / 50) x 9 + need / yield x 12; price = round(cost / (1 - margin), 2).
 */
export function sampleTable(): {
  ids: Record<'cost' | 'price' | 'perScrew' | 'shelf', string>;
  figures: FigureTable;
} {
  const packs = f.roundUp(
    'whole packs',
    f.divide('packs', ratio('screws', '120'), f.number(50)),
    f.number(1),
  );
  const screws = f.scale('screws', money('pack-price', '9'), packs);
  const timber = f.scale(
    'timber',
    money('board-price', '12'),
    f.divide('bought', ratio('need', '3.5'), ratio('yield', '0.7')),
  );
  const cost = f.sum('cost', 'money', [screws, timber]);
  const price = f.roundMoney(
    'price',
    f.divide('before rounding', cost, f.complement('1 - margin', ratio('margin', '0.3'))),
  );
  const perScrew = f.divide('cost of a screw', screws, ratio('screws-used', '100'));
  const shelf = f.scale('shelf', money('shelf-price', '20'), f.number(2));
  return toTable({ cost, price, perScrew, shelf }, { withDerivations: true });
}
