import { type DecimalLike, decimal } from '@scantling/decimals';
import type { DraftLine } from './quote-draft.ts';

/** Words for what is counted on its own: one, and several. */
const COUNTED: readonly (readonly [one: string, several: string])[] = [
  ['piece', 'pieces'],
  ['set', 'sets'],
  ['pair', 'pairs'],
  ['board', 'boards'],
  ['sheet', 'sheets'],
  ['pack', 'packs'],
  ['visit', 'visits'],
  ['hour', 'hours'],
  ['day', 'days'],
  ['week', 'weeks'],
  ['metre', 'metres'],
  ['meter', 'meters'],
  ['litre', 'litres'],
  ['liter', 'liters'],
  ['foot', 'feet'],
  ['shelf', 'shelves'],
  ['leaf', 'leaves'],
  ['half', 'halves'],
];

/** "frames" for one frame is "frame", "boxes" "box"; "glass", "gross" and "m" stay. Papers are in English. */
function singular(unit: string): string {
  if (!/^[a-z]{3,}s$/.test(unit) || /([su]s|is)$/.test(unit)) return unit;
  return /(x|s|z|ch|sh)es$/.test(unit) ? unit.slice(0, -2) : unit.slice(0, -1);
}

/** The unit as it reads after a number: "1 piece", "2 pieces", "0.5 hours". */
export function unitAfter(quantity: DecimalLike, unit: string): string {
  const words = COUNTED.find((pair) => pair.includes(unit.trim()));
  const isOne = decimal(quantity).eq(1);
  if (words === undefined) return isOne ? singular(unit.trim()) : unit;
  const [one, several] = words;
  return isOne ? one : several;
}

/** What a line is counted in: a line of a cost sheet in pieces, any other in what it says. */
export function lineUnit({
  kind,
  unit,
}: {
  readonly kind: DraftLine['kind'];
  readonly unit: string;
}): string {
  return kind === 'cost-sheet' ? 'piece' : unit;
}

/** "2 pieces": how many of what, with a space that does not break. */
export function quantityText(quantity: DecimalLike, unit: string): string {
  return `${decimal(quantity)}\u00a0${unitAfter(quantity, unit)}`.trim();
}
