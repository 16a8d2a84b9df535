import { type Decimal, decimal } from '@scantling/decimals';
import {
  entered,
  type FigureNode,
  input,
  Recalculation,
  solve,
  sum,
  times,
  toTable,
} from '@scantling/figures';
import { describe, expect, it } from 'vitest';
import type { SheetSolution } from '../api/solve-cost-sheet.ts';
import { curveWindow, solveCurve } from './solve-curve.ts';
import { costForMargin, readTarget } from './solve-question.ts';
import { type SolveVoice, solutionWords } from './solve-words.ts';

const USD = 'USD';
const source = entered();
const hours = input({ key: 'bill/operation saw/run', label: 'Sawing', unit: 'h', value: '10', source });
const rate = input({
  key: 'labour/own/rate',
  label: 'an hour',
  unit: 'money/h',
  value: '40',
  currency: USD,
  source,
});
const timber = input({ key: 'timber', label: 'timber', unit: 'money', value: '125', currency: USD, source });
const cost = sum('cost', 'money', [times('labour', rate, hours), timber]);
const { ids, figures } = toTable({ cost }, { withDerivations: true });

type Probed = SheetSolution['now'];

/** What the API would answer, from the same engine. */
function solved(target: string, ends: { low?: string; high?: string } = {}) {
  const found = solve(new Recalculation(figures), {
    leaf: 'bill/operation saw/run',
    result: ids.cost,
    target: { value: target },
    ...ends,
  });
  const nodes: Record<string, FigureNode> = {};
  const kept = (value: Decimal): string => {
    const id = `n${Object.keys(nodes).length}`;
    nodes[id] = { id, label: id, unit: 'ratio', currency: null, value: value.toString() };
    return id;
  };
  const probe = ({ value, result, target: wanted, gap }: typeof found.now): Probed => ({
    value: kept(value),
    result: result && kept(result),
    target: wanted && kept(wanted),
    residual: gap && kept(gap),
  });
  const solution: SheetSolution = {
    leaf: 'bill/operation saw/run',
    crossings: found.crossings.map(({ at, from, to }) => ({ at: probe(at), from: kept(from), to: kept(to) })),
    steps: found.steps.map(({ below, above }) => ({ below: probe(below), above: probe(above) })),
    why: found.why,
    course: found.course,
    searched: { low: kept(found.searched.low), high: kept(found.searched.high) },
    least: found.least && probe(found.least),
    greatest: found.greatest && probe(found.greatest),
    now: probe(found.now),
    figures: nodes,
  };
  return { found, solution };
}

function voiceFor(target: string, held: SolveVoice['held'] = null): SolveVoice {
  const [leaf, now] = ['bill/operation saw/run', ids.cost].map((id) => figures[id]);
  if (leaf === undefined || now === undefined) throw new Error('both stand in the table made above');
  return { leaf, now, name: 'cost', target, held, system: 'metric', locale: 'en-US' };
}

describe('the answer in words', () => {
  it('says the value, what it is now, and how far apart they are', () => {
    expect(solutionWords(voiceFor('605'), solved('605').solution)).toBe(
      'For the cost of production to be $605.00, “Sawing” must be 12 h. It is 10 h now: 2 h more (20.0\u00a0%).',
    );
    expect(solutionWords(voiceFor('325'), solved('325').solution)).toMatch(/: 5 h less \(50\.0\s%\)\.$/);
  });

  it('says what a price that is held leaves', () => {
    const target = costForMargin('725', '0');
    expect(solutionWords(voiceFor(target, { price: '725', margin: '0' }), solved(target).solution)).toBe(
      'For the price as it stands, $725.00, to leave nothing, “Sawing” must be 15 h. It is 10 h now: 5 h more (50.0\u00a0%).',
    );
    expect(costForMargin('1000', '0.25')).toBe('750');
  });

  it('says that no value is enough, and where it comes nearest', () => {
    expect(solutionWords(voiceFor('100'), solved('100').solution)).toBe(
      'No value of “Sawing” between 0 h and 10,485,760 h is enough for the cost of production to be $100.00. The cost of production comes nearest at 0 h: $125.00.',
    );
    expect(solutionWords(voiceFor('900'), solved('900', { low: '0', high: '12' }).solution)).toMatch(
      /between 0 h and 12 h .* nearest at 12 h: \$605\.00\.$/,
    );
  });
});

it('says that the result steps over what is wanted, and is told what is on either side', () => {
  const { solution } = solved('605');
  const side = (value: string, result: string): Probed => ({ value, result, target: null, residual: null });
  const node = (id: string, value: string): FigureNode => ({
    id,
    label: id,
    unit: 'ratio',
    currency: null,
    value,
  });
  const nodes = [
    node('a', '12'),
    node('a2', '12.0000001'),
    node('b', '13'),
    node('x', '600'),
    node('y', '610'),
  ];
  const over = (above: string): SheetSolution => ({
    ...solution,
    crossings: [],
    why: 'steps-over',
    steps: [{ below: side('a', 'x'), above: side(above, 'y') }],
    figures: Object.fromEntries(nodes.map((one) => [one.id, one])),
  });
  expect(solutionWords(voiceFor('605'), over('b'))).toMatch(
    /At 12 h it is \$600\.00, at 13 h it is \$610\.00\.$/,
  );
  expect(solutionWords(voiceFor('605'), over('a2'))).toMatch(
    /Just below 12 h it is \$600\.00, just above it \$610\.00\.$/,
  );
});

describe('the curve', () => {
  it('runs over what is marked with room beside it, and never over what cannot be', () => {
    expect(Object.values(curveWindow('10', ['15'])).map(String)).toEqual(['8.75', '16.25']);
    expect(Object.values(curveWindow('10', [])).map(String)).toEqual(['0', '25']);
    expect(Object.values(curveWindow('0.6', ['0.95'], { least: '0', most: '1' })).map(String)).toEqual([
      '0.5125',
      '1',
    ]);
    expect(Object.values(curveWindow('0', [])).map(String)).toEqual(['0', '1.25']);
  });

  it('is the result worked out again at each place, the marked ones among them', () => {
    const asked = { leaf: 'bill/operation saw/run', result: ids.cost, low: decimal(0), high: decimal(20) };
    const points = solveCurve(figures, asked, ['11.5']);
    expect(points.find(({ at }) => at === '11.5')?.value).toBe('585');
    for (const { at, value } of points) expect(value).toBe(decimal(at).times(40).plus(125).toFixed());
    expect([points[0]?.at, points.at(-1)?.at]).toEqual(['0', '20']);
  });
});

it('reads what is wanted as it is written', () => {
  expect(readTarget('1250,50', false)).toEqual({ value: '1250.50' });
  expect(readTarget('12.5 %', true)).toEqual({ value: '0.125' });
  expect(readTarget('0', true)).toEqual({ value: '0' });
  expect(readTarget('plenty', false)).toHaveProperty('problem.mend');
  expect(readTarget('', false)).toHaveProperty('problem');
});
