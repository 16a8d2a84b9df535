import { type Decimal, decimal } from '@scantling/decimals';
import { type Recalculation, TooMuchWorkError, type Worked } from '../recalculation/index.ts';
import { BLOCK } from './column-arithmetic.ts';
import { compileProgram } from './program.ts';
import type { Risk, RiskQuestion, RiskResult, Uncertain } from './risk-question.ts';
import { createSampler } from './sampler.ts';
import { statisticsOf } from './statistics.ts';
import { uncertainValues } from './uncertain-values.ts';
import { VarianceShares } from './variance-shares.ts';

/** Steps times samples: some seconds. */
const MOST_WORK = 1e9;

/** The table with the leaves held at other values, and its results with every uncertain value at its mean. */
function atMeans(sheet: Recalculation, question: RiskQuestion, uncertain: readonly Uncertain[]) {
  const held = new Map(
    Object.entries(question.changes ?? {}).map(([id, value]) => [sheet.table.leafPlace(id), decimal(value)]),
  );
  const means = new Map<number, Decimal>([
    ...held,
    ...uncertain.map(({ place, mean }) => [place, mean] as const),
  ]);
  const read = (set: ReadonlyMap<number, Decimal>) => {
    const moved = sheet.move(set, sheet.cone([...set.keys()]), []);
    return (place: number): Worked => {
      const now = moved.get(place);
      return now === undefined ? sheet.value(place) : now;
    };
  };
  return { heldValue: read(held), meanValue: read(means) };
}

/**
 * What a table's results come to when some of its values are not known for certain: the uncertain values are drawn,
 * and everything that rests on them is worked out again in every sample, roundings, whole packs and breaks included.
 * Samples are floats; the same question and seed give the same answer.
 * @throws RiskInputError, UnknownFigureError, TooMuchWorkError
 */
export function simulate(sheet: Recalculation, question: RiskQuestion): Risk {
  const uncertain = uncertainValues(sheet, question);
  const results = question.results.map((id) => sheet.table.place(id));
  const { heldValue, meanValue } = atMeans(sheet, question, uncertain);
  const sampled = uncertain.map(({ place }) => place);
  const moving = sheet.cone(sampled, sheet.basis(results));
  const program = compileProgram(
    sheet.table,
    sampled,
    moving,
    (place) => heldValue(place)?.toNumber() ?? Number.NaN,
  );
  if ((program.steps + sampled.length) * question.samples > MOST_WORK)
    throw new TooMuchWorkError(`${question.samples} samples of ${program.steps} figures`);
  const sampler = createSampler(uncertain, question.seed, program.column);
  const collected = results.map((place) => ({
    place,
    column: program.column(place),
    values: new Float64Array(question.samples),
    count: 0,
    shares: new VarianceShares(sampler.streams),
  }));
  for (let done = 0; done < question.samples; done += BLOCK) {
    sampler.next();
    program.run();
    const here = Math.min(BLOCK, question.samples - done);
    for (const result of collected) {
      for (let at = 0; at < here; at += 1) {
        const value = result.column[at] ?? Number.NaN;
        if (!Number.isFinite(value)) continue;
        result.values[result.count] = value;
        result.count += 1;
        result.shares.add(at, value);
      }
    }
  }
  return {
    samples: question.samples,
    seed: question.seed,
    uncertain,
    results: collected.map(({ place, values, count, shares }): RiskResult => {
      const statistics = count === 0 ? null : statisticsOf(values.subarray(0, count));
      return {
        id: sheet.table.figures[place]?.node.id ?? '',
        atMeans: meanValue(place),
        statistics,
        withoutAnswer: question.samples - count,
        shares: statistics === null ? [] : shares.shares(statistics),
      };
    }),
  };
}
