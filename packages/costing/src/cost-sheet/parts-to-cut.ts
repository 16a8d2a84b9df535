import {
  COUNT_BOUNDS,
  complement,
  divide,
  type Figure,
  number,
  roundUp,
  SHARE_BOUNDS,
  scale,
  sum,
} from '@scantling/figures';
import type { Part } from '../bill-of-materials/index.ts';
import type { PartNeed } from './part-need.ts';
import type { SheetContext } from './sheet-context.ts';

/** A part with how many of it are cut. */
export interface PartCut {
  readonly need: PartNeed;
  readonly count: Figure<'ratio'>;
}

/** Parts to cut for so many pieces: spares and rejects on top, in whole parts. */
export function partsToCut(need: PartNeed, pieces: Figure<'ratio'>, sheet: SheetContext): Figure<'ratio'> {
  const { part } = need;
  const [inOne, ...assemblies] = partCount(part, sheet);
  const wanted = scale(`${part.name}: wanted`, inOne, ...assemblies, pieces);
  const spares = part.spares ?? 0;
  const sparesKey = `part ${part.id}/spares`;
  if (spares === 0 && !sheet.isWorkedOut(sparesKey) && part.rejectShare === undefined) return wanted;
  const good =
    part.rejectShare === undefined
      ? wanted
      : divide(
          `${part.name}: with rejects`,
          wanted,
          complement(
            'share that is good',
            sheet.fromBill(
              `part ${part.id}/reject-share`,
              `${part.name}: share rejected`,
              'ratio',
              part.rejectShare,
              SHARE_BOUNDS,
            ),
          ),
        );
  const whole = roundUp(`${part.name}: whole parts`, good, number(1));
  return sum(`${part.name}: to cut`, 'ratio', [
    whole,
    sheet.fromBill(sparesKey, `${part.name}: spares`, 'ratio', String(spares), COUNT_BOUNDS),
  ]);
}

/** How many of a part are in a piece, as factors: the part's own number, and that of its assembly. */
export function partCount(part: Part, sheet: SheetContext): [Figure<'ratio'>, ...Figure<'ratio'>[]] {
  return [
    sheet.fromBill(
      `part ${part.id}/quantity`,
      `${part.name}: number`,
      'ratio',
      String(part.quantity),
      COUNT_BOUNDS,
    ),
    ...assemblyCount(part.assembly, sheet),
  ];
}

/** How many of an assembly are in a piece, where it is not one. */
export function assemblyCount(id: string | undefined, sheet: SheetContext): Figure<'ratio'>[] {
  const assembly = id === undefined ? undefined : sheet.assembly(id);
  if (assembly === undefined) return [];
  const key = `assembly ${assembly.id}/quantity`;
  if (assembly.quantity === 1 && !sheet.isWorkedOut(key)) return [];
  return [sheet.fromBill(key, `${assembly.name}: number`, 'ratio', String(assembly.quantity), COUNT_BOUNDS)];
}
