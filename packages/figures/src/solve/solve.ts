import { type Decimal, decimal } from '@scantling/decimals';
import { type Recalculation, UnknownFigureError } from '../recalculation/index.ts';
import { closeIn, type Prober, plateau } from './close-in.ts';
import { pointsToTry } from './points-to-try.ts';
import type { Crossing, NoSolution, Probe, Solution, SolveQuestion, Step } from './solve-question.ts';

/** A function that sets the leaf and reads the gap, working out only what lies between the two. */
function proberOf(sheet: Recalculation, question: SolveQuestion, leaf: number): Prober {
  const result = sheet.table.place(question.result);
  const other = 'figure' in question.target ? sheet.table.place(question.target.figure) : null;
  const stated = 'value' in question.target ? decimal(question.target.value) : null;
  const within = sheet.basis(other === null ? [result] : [result, other]);
  const cone = sheet.cone([leaf], within);
  return (value) => {
    const moved = sheet.move(new Map([[leaf, value]]), cone, []);
    const read = (place: number) => {
      const now = moved.get(place);
      return now === undefined ? sheet.value(place) : now;
    };
    const out = read(result);
    const target = other === null ? stated : read(other);
    return { value, result: out, target, gap: out === null || target === null ? null : out.minus(target) };
  };
}

type Worked = Probe & { readonly gap: Decimal };
const isWorked = (probe: Probe): probe is Worked => probe.gap !== null;

/**
 * What a leaf must be for a result to come out at a target. The result is tried at many values within the bounds;
 * between two of them with the target in between it is closed in on, with decimals and all roundings.
 * What happens between two values tried and comes back to the same side is not seen.
 * @throws UnknownFigureError, TooMuchWorkError
 */
export function solve(sheet: Recalculation, question: SolveQuestion): Solution {
  const leaf = sheet.table.leafPlace(question.leaf);
  const value = sheet.value(leaf);
  if (value === null) throw new UnknownFigureError(question.leaf);
  const probe = proberOf(sheet, question, leaf);
  const bounds = sheet.table.figures[leaf]?.node.bounds ?? {};
  const points = pointsToTry(value, bounds, { low: question.low, high: question.high });
  const tried = points.map(probe);
  const worked = tried.filter(isWorked);
  const { crossings, steps } = findAll(tried, probe, bounds.isWhole === true);
  const ordered = [...worked].sort((a, b) => a.gap.cmp(b.gap));
  const [low = value, high = value] = [points[0], points.at(-1)];
  const course = courseOf(worked);
  return {
    crossings,
    steps,
    why: crossings.length > 0 ? null : reasonOf(worked, steps, course),
    course,
    searched: { low, high },
    least: ordered[0] ?? null,
    greatest: ordered.at(-1) ?? null,
    now: probe(value),
  };
}

function reasonOf(worked: readonly Worked[], steps: readonly Step[], course: Solution['course']): NoSolution {
  if (worked.length === 0) return 'no-answer';
  if (steps.length > 0) return 'steps-over';
  return course === 'flat' ? 'does-not-move' : 'never-reaches';
}

function courseOf(worked: readonly Worked[]): Solution['course'] {
  const turns = worked.slice(1).map((probe, at) => probe.gap.cmp(worked[at]?.gap ?? probe.gap));
  const [rises, falls] = [turns.includes(1), turns.includes(-1)];
  if (rises && falls) return 'both-ways';
  if (rises) return 'rises';
  return falls ? 'falls' : 'flat';
}

/** Every stretch of values tried that meets the target, in order. */
function findAll(
  tried: readonly Probe[],
  probe: Prober,
  isWhole: boolean,
): { crossings: Crossing[]; steps: Step[] } {
  const crossings: Crossing[] = [];
  const steps: Step[] = [];
  for (let at = 0; at < tried.length; at += 1) {
    const here = tried[at];
    if (here === undefined || !isWorked(here)) continue;
    if (here.gap.isZero()) {
      let last = at;
      while (tried[last + 1]?.gap?.isZero() === true) last += 1;
      const [before, after] = [tried[at - 1] ?? here, tried[last + 1] ?? tried[last] ?? here];
      crossings.push(plateau(before, here, after, probe, isWhole));
      at = last;
      continue;
    }
    const next = tried[at + 1];
    if (next === undefined || !isWorked(next) || next.gap.isZero()) continue;
    if (next.gap.isNegative() === here.gap.isNegative()) continue;
    const found = closeIn(here, next, probe, isWhole);
    if (found === null) continue;
    if ('below' in found) steps.push(found);
    else crossings.push(found);
  }
  return { crossings, steps };
}
