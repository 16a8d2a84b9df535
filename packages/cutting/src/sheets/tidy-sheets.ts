import type { ExactInstance } from '../instance/exact-instance.ts';
import type { PatternChoice } from '../patterns/pattern.ts';
import { withoutSurplus } from '../patterns/surplus.ts';
import { clearRegion, copyRegion, gather, partsIn } from './region.ts';
import { type SheetPattern, sheetPattern, type WorthOfRectangle } from './sheet.ts';

/** Cuts exactly what is wanted: what there is too much of is left uncut. */
export function tidySheets(
  instance: ExactInstance,
  choice: PatternChoice<SheetPattern>,
  quantities: readonly number[],
  worth: WorthOfRectangle | null,
): PatternChoice<SheetPattern> {
  return withoutSurplus(choice, quantities, ({ stock, root }, taken) => {
    const copy = copyRegion(root);
    for (const [part, number] of taken)
      for (let turn = 0; turn < number; turn += 1) {
        const [region] = gather(copy, (at) => at.part === part);
        if (region !== undefined) clearRegion(region);
      }
    return partsIn(copy).length === 0 ? null : sheetPattern(instance, { stock, root: copy }, worth);
  });
}
