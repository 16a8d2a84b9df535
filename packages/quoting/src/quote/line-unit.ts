import { type DecimalLike, decimal } from '@scantling/decimals';
import type { DraftLine } from './quote-draft.ts';

/** Words for what is counted on its own: one, and several. Any other unit stands as the quote has it. */
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
];

/** The unit as it reads after a number: "1 piece", "2 pieces", "0.5 hours". */
export function unitAfter(quantity: DecimalLike, unit: string): string {
  const words = COUNTED.find((pair) => pair.includes(unit.trim()));
  if (words === undefined) return unit;
  const [one, several] = words;
  return decimal(quantity).eq(1) ? one : several;
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
