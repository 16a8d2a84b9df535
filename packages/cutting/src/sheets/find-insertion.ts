import type { ExactInstance } from '../instance/exact-instance.ts';
import type { Generator } from '../seeded-generator.ts';
import { type Insertion, type Region, stageOfCut, type Way } from './region.ts';

/** A free region's standing: two regions together stand below one of their area, so that large ones are spared. */
function standing(length: number, width: number): number {
  const area = length * width;
  return area * Math.sqrt(Math.sqrt(area));
}

/** Chance that a place is passed over, so that the search does not always do the same. */
const BLINK = 0.01;

const WAYS: readonly Way[] = ['crosscut', 'rip'];

/** Finds the places for parts in free regions of sheets. Counts the places it looks at: they are the search's work. */
export class InsertionFinder {
  looks = 0;
  private best: Insertion | null = null;
  private leastLoss = Number.POSITIVE_INFINITY;

  constructor(
    private readonly instance: ExactInstance,
    private readonly random: Generator,
  ) {}

  begin(): void {
    this.best = null;
    this.leastLoss = Number.POSITIVE_INFINITY;
  }

  found(): Insertion | null {
    return this.best;
  }

  /** Looks at one free region for one part. */
  look(region: Region, part: number): void {
    const piece = this.instance.parts[part];
    if (piece === undefined) return;
    this.lookAt(region, piece.length, piece.width, false);
    if (piece.canTurn && piece.length !== piece.width) this.lookAt(region, piece.width, piece.length, true);
  }

  private lookAt(region: Region, length: number, width: number, isTurned: boolean): void {
    const rest = region.length - length;
    const beside = region.width - width;
    if (rest < 0 || beside < 0) return;
    this.looks += 1;
    if (this.random() < BLINK) return;
    const whole = standing(region.length, region.width);
    for (const firstWay of WAYS) {
      // Two cuts where both ways leave something; then which comes first matters.
      if ((rest === 0 || beside === 0) && firstWay === 'rip') break;
      const trimmed = this.trimming(region, rest, beside, firstWay);
      if (trimmed === null) continue;
      const loss =
        firstWay === 'crosscut'
          ? whole -
            standing(rest, region.width) * (trimmed && beside === 0 ? 0 : 1) -
            standing(length, beside) * (trimmed ? 0 : 1)
          : whole - standing(region.length, beside) - standing(rest, width) * (trimmed ? 0 : 1);
      if (loss < this.leastLoss) {
        this.leastLoss = loss;
        this.best = { region, isTurned, firstWay, isTrimmed: trimmed };
      }
    }
  }

  /** Whether the last cut is a trim beyond the stages allowed; null where more than that would be. */
  private trimming(region: Region, rest: number, beside: number, firstWay: Way): boolean | null {
    const { stages, firstCut } = this.instance;
    if (stages === Number.POSITIVE_INFINITY && firstCut === 'either') return false;
    let stage = region.stage;
    if (rest > 0 && beside > 0) stage = stageOfCut(region, firstWay, firstCut) + 1;
    else if (rest > 0) stage = stageOfCut(region, 'crosscut', firstCut);
    else if (beside > 0) stage = stageOfCut(region, 'rip', firstCut);
    if (stage <= stages) return false;
    return stage === stages + 1 ? true : null;
  }
}
