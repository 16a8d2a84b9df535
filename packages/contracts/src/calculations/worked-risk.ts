import { type Decimal, decimal, formatPercent } from '@scantling/decimals';
import {
  derive,
  type Effort,
  type FigureNode,
  type FigureTable,
  input,
  number,
  Recalculation,
  type RiskQuestion,
  type RiskResult,
  type Statistics,
  simulate,
  toTable,
  type Uncertain,
} from '@scantling/figures';
import type { z } from 'zod';
import { AnswerFigures, nodeOf } from './figure-question.ts';
import type { riskAnswerSchema } from './risk.ts';

type Answer = z.output<typeof riskAnswerSchema>;
type Question = RiskQuestion & {
  readonly figures: FigureTable;
  readonly percentile: string;
  readonly quoted?: { readonly cost: string; readonly price: string; readonly leastMargin?: string };
};

/** What one answer is put together with. */
interface Making {
  readonly answer: AnswerFigures;
  readonly question: Question;
  /** Of every figure that was sampled. */
  readonly text: string;
}

/** Samples say no more than this about anything. */
function sampled(value: number): Decimal {
  return decimal(value).toSignificantDigits(12);
}

/** @throws RiskInputError, UnknownFigureError, FigureTableError, TooMuchWorkError */
export function riskOf(question: Question, effort: Effort): Answer {
  const { figures, quoted, results: asked } = question;
  const results = [...new Set([...asked, ...(quoted === undefined ? [] : [quoted.cost])])];
  const found = simulate(new Recalculation(figures, effort), { ...question, results });
  const text = `${found.samples} samples, seed ${found.seed}`;
  const making: Making = { answer: new AnswerFigures(), question, text };
  const made = found.results.map((result) => [result.id, resultOf(result, making)] as const);
  const cost = found.results.find(({ id }) => id === quoted?.cost);
  return {
    samples: found.samples,
    seed: found.seed,
    uncertain: found.uncertain.map((value) => uncertainOf(value, making)),
    results: made.filter(([id]) => asked.includes(id)).map(([, result]) => result),
    chances: chancesOf(cost?.statistics ?? null, making),
    figures: making.answer.table(),
  };
}

function uncertainOf(value: Uncertain, { answer, question }: Making): Answer['uncertain'][number] {
  const node = nodeOf(question.figures, value.id);
  const { unit, currency, label } = node;
  const point = (name: 'low' | 'likely' | 'high') =>
    input({
      key: `risk/${value.id}/${name}`,
      label: `${label}: ${name}`,
      unit,
      value: value[name],
      source: { kind: 'entered', text: 'the estimate that was simulated' },
      ...(currency === null ? {} : { currency }),
    });
  const [low, likely, high] = [point('low'), point('likely'), point('high')];
  const weight = value.shape === 'pert' ? 4 : 1;
  const weighed = derive(`${weight} times the likely value`, unit, 'product', [likely, number(weight)]);
  const mean = derive(`${label}: mean`, unit, 'quotient', [
    derive('low, likely and high, weighed', unit, 'sum', [low, weighed, high]),
    number(weight + 2),
  ]);
  const { ids, figures } = toTable(
    { [`risk/${value.id}/mean`]: mean, low, likely, high },
    { withDerivations: true },
  );
  for (const made of Object.values(figures)) answer.add(made);
  return {
    figure: answer.keep(node),
    low: `risk/${value.id}/low`,
    likely: `risk/${value.id}/likely`,
    high: `risk/${value.id}/high`,
    mean: ids[`risk/${value.id}/mean`] ?? '',
    shape: value.shape,
    group: value.group,
  };
}

function resultOf(result: RiskResult, making: Making): Answer['results'][number] {
  const { answer, question } = making;
  const node = nodeOf(question.figures, result.id);
  const figure = answer.keep(node);
  const id = (name: string) => `risk/${result.id}/${name}`;
  const atMeans =
    result.atMeans &&
    answer.found(id('at-means'), `${node.label}, every uncertain value at its mean`, node, {
      value: result.atMeans,
      text: 'worked out with every uncertain value at its mean',
    });
  const spread = result.statistics && spreadOf(result.statistics, node, making);
  return {
    figure,
    atMeans,
    spread,
    contingency:
      atMeans === null || spread === null
        ? null
        : answer.less(
            id('contingency'),
            `contingency: ${formatPercent(question.percentile)} of samples are covered by it`,
            [spread.percentile, atMeans],
            sampled(result.statistics?.percentile(Number(question.percentile)) ?? 0).minus(
              result.atMeans ?? 0,
            ),
          ),
    withoutAnswer: result.withoutAnswer,
    shares: result.shares.map(({ share, ...stream }) => ({ ...stream, share: sampled(share).toFixed(4) })),
  };
}

type Spread = NonNullable<Answer['results'][number]['spread']>;

function spreadOf(statistics: Statistics, node: FigureNode, { answer, question, text }: Making): Spread {
  const add = (name: string, label: string, value: number) =>
    answer.add({
      id: `risk/${node.id}/${name}`,
      label: `${node.label}: ${label}`,
      unit: node.unit,
      currency: node.currency,
      value: sampled(value).toString(),
      source: { kind: 'simulation', text },
    });
  const covers = (share: number) => `not above it in ${formatPercent(share)} of samples`;
  const at = (share: number) => add(`p${share * 100}`, covers(share), statistics.percentile(share));
  const chosen = Number(question.percentile);
  const { edges, counts, cumulative } = statistics.histogram;
  return {
    mean: add('mean', 'mean of the samples', statistics.mean),
    sd: add('sd', 'standard deviation of the samples', statistics.sd),
    p10: at(0.1),
    p50: at(0.5),
    p80: at(0.8),
    p90: at(0.9),
    percentile: add('percentile', covers(chosen), statistics.percentile(chosen)),
    histogram: { edges: edges.map(String), counts: [...counts], cumulative: [...cumulative] },
  };
}

function chancesOf(cost: Statistics | null, { answer, question, text }: Making): Answer['chances'] {
  const { quoted } = question;
  if (quoted === undefined || cost === null) return null;
  const price = decimal(quoted.price);
  const add = (name: string, label: string, bound: Decimal) =>
    answer.add({
      id: `risk/${name}`,
      label,
      unit: 'ratio',
      currency: null,
      value: sampled(cost.shareAbove(bound.toNumber())).toString(),
      source: { kind: 'simulation', text: `${text}: share in which the cost is above ${bound.toString()}` },
    });
  const { leastMargin } = quoted;
  return {
    ofLoss: add('chance-of-loss', `chance of a loss at a price of ${quoted.price}`, price),
    ofLowMargin:
      leastMargin === undefined
        ? null
        : add(
            'chance-of-low-margin',
            `chance of a margin below ${formatPercent(leastMargin)} at a price of ${quoted.price}`,
            price.times(decimal(1).minus(leastMargin)),
          ),
  };
}
