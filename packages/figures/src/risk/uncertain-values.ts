import { decimal } from '@scantling/decimals';
import type { Recalculation } from '../recalculation/index.ts';
import { findThreePoints } from '../three-points/index.ts';
import { type Estimate, RiskInputError, type RiskQuestion, type Uncertain } from './risk-question.ts';
import { spreadMean } from './spread.ts';

const HOURS = 'hours';

/**
 * What is sampled: the estimates given, and those that stand in the table. A three-point estimate is sampled in the
 * place of its mean, so that it counts once.
 * @throws RiskInputError, UnknownFigureError
 */
export function uncertainValues(sheet: Recalculation, question: RiskQuestion): Uncertain[] {
  const threes = findThreePoints(sheet.table);
  const inThrees = new Set(threes.flatMap(({ low, likely, high }) => [low, likely, high]));
  const means = new Set(threes.map(({ mean }) => mean));
  const given = Object.entries(question.uncertain).map(([id, estimate]) => {
    const found = sheet.table.place(id);
    const place = means.has(found) ? found : sheet.table.leafPlace(id);
    if (inThrees.has(place))
      throw new RiskInputError(
        `uncertain.${id}`,
        'is a part of a three-point estimate already',
        'name the mean of the estimate, or leave it out: the estimate is sampled as it stands',
      );
    return uncertainOf(sheet, place, estimate, question);
  });
  const known = new Set(given.map(({ place }) => place));
  const standing = question.usesThreePoints ? threes.filter(({ mean }) => !known.has(mean)) : [];
  const found = standing.flatMap(({ mean, low, likely, high }): Uncertain[] => {
    const [least, middle, most] = [low, likely, high].map((place) => sheet.value(place));
    if (!least || !middle || !most) return [];
    return [uncertainOf(sheet, mean, { low: least, likely: middle, high: most }, question)];
  });
  const all = [...given, ...found].sort((a, b) => (a.id < b.id ? -1 : 1));
  if (all.length > 0) return all;
  throw new RiskInputError(
    'uncertain',
    'names nothing, and no three-point estimate stands in the table',
    'give least, likely and greatest of at least one value',
  );
}

function uncertainOf(
  sheet: Recalculation,
  place: number,
  estimate: Estimate,
  question: RiskQuestion,
): Uncertain {
  const node = sheet.table.figures[place]?.node;
  const id = node?.id ?? '';
  const [low, likely, high] = [decimal(estimate.low), decimal(estimate.likely), decimal(estimate.high)];
  if (low.gt(likely) || likely.gt(high))
    throw new RiskInputError(
      `uncertain.${id}`,
      `goes from ${low.toString()} over ${likely.toString()} to ${high.toString()}`,
      'give the least, the likely and the greatest value in this order',
    );
  const hours = node?.unit === 'h' && question.doHoursMoveTogether ? HOURS : null;
  const spread = { low, likely, high, shape: estimate.shape ?? question.shape };
  const group = estimate.group === undefined ? hours : estimate.group;
  return { id, place, ...spread, group, mean: spreadMean(spread) };
}
