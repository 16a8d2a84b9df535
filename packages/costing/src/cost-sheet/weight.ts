import { constant, derive, type Figure, sum } from '@scantling/figures';
import { faceOf, type PartNeed } from './part-need.ts';
import { partCount } from './parts-to-cut.ts';
import type { SheetContext } from './sheet-context.ts';

const MM_IN_M = constant('millimetres in a metre', 'ratio', 1000);

/** Finished volume x density of every part; components and finish are not weighed. */
export function weightOf(
  parts: readonly PartNeed[],
  sheet: SheetContext,
): { mass: Figure<'kg'>; partsWithoutDensity: string[] } {
  const masses: Figure<'kg'>[] = [];
  const partsWithoutDensity: string[] = [];
  for (const need of parts) {
    const { part, stock } = need;
    if (stock.density === undefined) {
      partsWithoutDensity.push(part.id);
      continue;
    }
    const face = faceOf(`${part.name}: finished face`, need.finishedLength, need.finishedWidth);
    const thickness = derive(`${part.name}: thickness in m`, 'm', 'quotient', [
      need.finishedThickness,
      MM_IN_M,
    ]);
    const volume = derive(`${part.name}: finished volume`, 'm3', 'product', [face, thickness]);
    const density = sheet.fromMaterial(stock, 'density', `${stock.name}: density`, 'kg/m3', stock.density);
    masses.push(
      derive(`${part.name}: weight`, 'kg', 'product', [density, volume, ...partCount(part, sheet)]),
    );
  }
  return { mass: sum('weight of a piece', 'kg', masses), partsWithoutDensity };
}
