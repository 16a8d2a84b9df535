import { nameOf } from '../patterns/pattern.ts';
import type { Sheet, SheetPattern } from './sheet.ts';

const MOST = 1500;

/** The sheets worth remembering, for the integer program to choose among: those that stood in good plans. */
export class SheetPool {
  private readonly byName = new Map<string, SheetPattern>();
  private readonly seen = new WeakSet<object>();

  remember(sheets: readonly Sheet[], toPattern: (sheet: Sheet) => SheetPattern): void {
    for (const sheet of sheets) {
      if (this.seen.has(sheet.root)) continue;
      this.seen.add(sheet.root);
      this.add(toPattern(sheet));
    }
  }

  /** The newest stand last; where there are too many, the oldest go. */
  add(pattern: SheetPattern): void {
    if (pattern.parts.length === 0) return;
    const name = nameOf(pattern);
    const known = this.byName.get(name);
    this.byName.delete(name);
    this.byName.set(name, known !== undefined && known.cost <= pattern.cost ? known : pattern);
    if (this.byName.size <= MOST) return;
    for (const oldest of this.byName.keys()) {
      this.byName.delete(oldest);
      break;
    }
  }

  patterns(): SheetPattern[] {
    return [...this.byName.values()];
  }

  /** The same sheets together, each with how often it is cut. */
  count(patterns: readonly SheetPattern[]): { pattern: SheetPattern; count: number }[] {
    const counted = new Map<string, { pattern: SheetPattern; count: number }>();
    for (const pattern of patterns) {
      if (pattern.parts.length === 0) continue;
      this.add(pattern);
      const known = counted.get(nameOf(pattern));
      counted.set(nameOf(pattern), { pattern: known?.pattern ?? pattern, count: (known?.count ?? 0) + 1 });
    }
    return [...counted.values()];
  }
}
