import type { ExactInstance } from '../instance/exact-instance.ts';
import type { Generator } from '../seeded-generator.ts';
import { InsertionFinder } from './find-insertion.ts';
import { clearRegion, copyRegion, gather, insertPart, partsIn, type Region } from './region.ts';
import { listFree, openSheet, type Sheet } from './sheet.ts';

/** A plan under way: sheets, what they cost, and the parts that found no place. */
export interface SheetState {
  readonly sheets: Sheet[];
  readonly cost: number;
  /** How many of each part are missing. */
  readonly missing: readonly number[];
}

const RUINED = 9;

/** Orders in which parts are placed; the larger first, mostly. */
type Order = (length: number, width: number, chance: number, value: number) => number;
/** With `max-value`: the most valuable for their area. */
const ORDERS_BY_VALUE: readonly Order[] = [
  (length, width, chance, value) => (value / (length * width)) * (0.7 + 0.6 * chance),
  (_length, _width, chance, value) => value * (0.7 + 0.6 * chance),
  (_length, _width, chance) => chance,
];

const ORDERS: readonly Order[] = [
  (length, width) => length * width,
  (length, width) => length * width,
  (length, width) => Math.max(length, width),
  (length) => length,
  (_, width) => width,
  (length, width, chance) => length * width * (0.5 + chance),
  (_length, _width, chance) => chance,
];

/**
 * Takes parts out of a few sheets and places them anew, with what was missing (ruin and recreate of guillotine sheets;
 * idea after Gardeyn, Wauters 2022, EJOR 301, written from memory). Sheets are opened only up to a cost.
 */
export class RuinAndRecreate {
  readonly finder: InsertionFinder;

  constructor(
    private readonly instance: ExactInstance,
    private readonly random: Generator,
  ) {
    this.finder = new InsertionFinder(instance, random);
  }

  /** Nothing cut yet. */
  nothing(): SheetState {
    return { sheets: [], cost: 0, missing: this.instance.parts.map(({ quantity }) => quantity) };
  }

  /** A changed copy of the state; sheets that did not change are shared. */
  change(state: SheetState, mostCost: number): SheetState {
    const missing = [...state.missing];
    const ruined = this.ruin(state.sheets, missing);
    return this.recreate(ruined, missing, mostCost);
  }

  /** Places what is missing in what is free, opening sheets as far as the cost allows. */
  recreate(given: readonly Sheet[], missing: number[], mostCost: number): SheetState {
    const { instance, random, finder } = this;
    const sheets = [...given];
    const owned = new Set<number>();
    let cost = sheets.reduce((sum, { stock }) => sum + (instance.stocks[stock]?.cost ?? 0), 0);
    const orders = instance.isMaxValue ? ORDERS_BY_VALUE : ORDERS;
    const order = orders[Math.floor(random() * orders.length)] ?? orders[0];
    const ranked = missing
      .flatMap((count, part) => {
        const { length = 0, width = 0, value = 0 } = instance.parts[part] ?? {};
        return count > 0 ? [{ part, rank: order?.(length, width, random(), value) ?? 0 }] : [];
      })
      .sort((a, b) => b.rank - a.rank || a.part - b.part);
    for (const { part } of ranked) {
      while ((missing[part] ?? 0) > 0) {
        finder.begin();
        let at = -1;
        sheets.forEach(({ free }, index) => {
          const before = finder.found();
          for (const region of free) finder.look(region, part);
          if (finder.found() !== before) at = index;
        });
        if (at < 0) {
          const stock = this.stockFor(part, sheets, mostCost - cost);
          if (stock < 0) break;
          const sheet = openSheet(instance, stock);
          at = sheets.push(sheet) - 1;
          owned.add(at);
          cost += instance.stocks[stock]?.cost ?? 0;
          for (const region of sheet.free) finder.look(region, part);
          // The chance of passing a place over may have left nothing.
          if (finder.found() === null) for (const region of sheet.free) finder.look(region, part);
          if (finder.found() === null) {
            sheets.pop();
            owned.delete(at);
            cost -= instance.stocks[stock]?.cost ?? 0;
            break;
          }
        }
        this.place(sheets, owned, at, part);
        missing[part] = (missing[part] ?? 0) - 1;
      }
    }
    return { sheets, cost, missing };
  }

  private place(sheets: Sheet[], owned: Set<number>, at: number, part: number): void {
    const sheet = sheets[at];
    const insertion = this.finder.found();
    const piece = this.instance.parts[part];
    if (sheet === undefined || insertion === null || piece === undefined) return;
    let target = sheet;
    let { region } = insertion;
    if (!owned.has(at)) {
      const index = sheet.free.indexOf(region);
      const root = copyRegion(sheet.root);
      target = { stock: sheet.stock, root, free: listFree(root) };
      region = target.free[index] ?? region;
      sheets[at] = target;
      owned.add(at);
    }
    const [length, width] = insertion.isTurned ? [piece.width, piece.length] : [piece.length, piece.width];
    insertPart({ ...insertion, region }, part, length, width, this.instance.firstCut);
    target.free = listFree(target.root);
  }

  /** Which stock to open for a part: cheap for its area, with some chance; -1 where none fits the money left. */
  private stockFor(part: number, sheets: readonly Sheet[], money: number): number {
    const { stocks, parts } = this.instance;
    const piece = parts[part];
    if (piece === undefined) return -1;
    const used = stocks.map(() => 0);
    for (const { stock } of sheets) used[stock] = (used[stock] ?? 0) + 1;
    let [best, least] = [-1, Number.POSITIVE_INFINITY];
    stocks.forEach(({ length, width, cost, available }, stock) => {
      const fits =
        (piece.length <= length && piece.width <= width) ||
        (piece.canTurn && piece.width <= length && piece.length <= width);
      if (!fits || cost > money || (used[stock] ?? 0) >= available) return;
      const rate = (cost / (length * width)) * (0.75 + 0.5 * this.random());
      if (rate < least) [best, least] = [stock, rate];
    });
    return best;
  }

  /** Takes regions out of one to three sheets, and a whole sheet at times. */
  private ruin(given: readonly Sheet[], missing: number[]): Sheet[] {
    const { random } = this;
    const sheets = [...given];
    const take = (parts: readonly number[]) => {
      for (const part of parts) missing[part] = (missing[part] ?? 0) + 1;
    };
    const touched = 1 + Math.floor(random() * 3);
    let left = 1 + Math.floor(random() * 2 * RUINED);
    for (let turn = 0; turn < touched && sheets.length > 0 && left > 0; turn += 1) {
      const at = Math.floor(random() * sheets.length);
      const sheet = sheets[at];
      if (sheet === undefined) break;
      if (random() < 0.12) {
        take(partsIn(sheet.root));
        sheets.splice(at, 1);
        continue;
      }
      const root = copyRegion(sheet.root);
      for (let cuts = Math.ceil(left / (touched - turn)); cuts > 0; ) {
        const held = gather(root, (region) => region.part >= 0 || (region.way !== null && region !== root));
        const region = this.oneOf(held);
        if (region === undefined) break;
        const parts = clearRegion(region);
        take(parts);
        cuts -= Math.max(1, parts.length);
        left -= Math.max(1, parts.length);
      }
      if (partsIn(root).length === 0) sheets.splice(at, 1);
      else sheets[at] = { stock: sheet.stock, root, free: listFree(root) };
    }
    return sheets;
  }

  private oneOf(regions: readonly Region[]): Region | undefined {
    return regions[Math.floor(this.random() * regions.length)];
  }
}
