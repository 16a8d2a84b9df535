import {
  Effort,
  type FigureNode,
  type FigureTable,
  type Probe,
  Recalculation,
  solve as solutionFor,
} from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText } from '../decimal-text.ts';
import { figureId, figureTableSchema } from '../figures.ts';
import { exampleFigures } from './example-figures.ts';
import { AnswerFigures, figureKey, givenFiguresSchema, nodeOf } from './figure-question.ts';

/** What is asked of a table, whoever brings it. */
export const solveFields = {
  leaf: figureKey.meta({ description: 'Id of the leaf looked for' }),
  target: z.union([z.strictObject({ value: decimalText }), z.strictObject({ figure: figureKey })]).meta({
    description:
      'A value, or a figure of the table that the result is to equal: where two ways cost the same',
  }),
  low: decimalText.exactOptional(),
  high: decimalText.exactOptional().meta({
    description:
      'Where to look. Where left out: what the leaf can be at all, and outward from its value to a million times it',
  }),
};

const bodySchema = z.strictObject({ figures: givenFiguresSchema, result: figureKey, ...solveFields });

const probeSchema = z
  .strictObject({
    value: figureId,
    result: figureId.nullable(),
    target: figureId.nullable(),
    residual: figureId.nullable().meta({ description: 'Result less target' }),
  })
  .meta({ description: 'The leaf at one value, and what comes of it' });

export const solveAnswerSchema = z.strictObject({
  leaf: figureId,
  crossings: z.array(z.strictObject({ at: probeSchema, from: figureId, to: figureId })).meta({
    description: 'Values that give the target; all from `from` to `to` do, where the result is rounded',
  }),
  steps: z
    .array(z.strictObject({ below: probeSchema, above: probeSchema }))
    .meta({ description: 'Where the result jumps over the target: the values on either side' }),
  why: z.enum(['never-reaches', 'steps-over', 'does-not-move', 'no-answer']).nullable().meta({
    description: 'Why no value gives the target; null where one does',
  }),
  course: z.enum(['rises', 'falls', 'flat', 'both-ways']).meta({
    description: 'How result less target goes as the leaf grows, at the values tried',
  }),
  searched: z.strictObject({ low: figureId, high: figureId }),
  least: probeSchema.nullable(),
  greatest: probeSchema.nullable(),
  now: probeSchema,
  figures: figureTableSchema,
});

type Question = { figures: FigureTable; result: string; leaf: string; low?: string; high?: string } & {
  target: { value: string } | { figure: string };
};

/** @throws UnknownFigureError, FigureTableError, TooMuchWorkError */
export function solutionOf(question: Question, effort: Effort): z.output<typeof solveAnswerSchema> {
  const { figures } = question;
  const found = solutionFor(new Recalculation(figures, effort), question);
  const nodes = {
    leaf: nodeOf(figures, question.leaf),
    result: nodeOf(figures, question.result),
    target: 'figure' in question.target ? nodeOf(figures, question.target.figure) : null,
  };
  const answer = new AnswerFigures();
  const value = (id: string, label: string, at: { toString(): string }) =>
    answer.found(`solve/${id}`, `${nodes.leaf.label}: ${label}`, nodes.leaf, {
      value: at,
      text: 'found by trying values',
    });
  const probe = (id: string, at: Probe) => probeOf(answer, nodes, `solve/${id}`, at);
  return {
    leaf: answer.keep(nodes.leaf),
    crossings: found.crossings.map(({ at, from, to }, index) => ({
      at: probe(`${index + 1}`, at),
      from: value(`${index + 1}/from`, 'from', from),
      to: value(`${index + 1}/to`, 'to', to),
    })),
    steps: found.steps.map(({ below, above }, index) => ({
      below: probe(`step-${index + 1}/below`, below),
      above: probe(`step-${index + 1}/above`, above),
    })),
    why: found.why,
    course: found.course,
    searched: {
      low: value('low', 'least value tried', found.searched.low),
      high: value('high', 'greatest value tried', found.searched.high),
    },
    least: found.least && probe('least', found.least),
    greatest: found.greatest && probe('greatest', found.greatest),
    now: probe('now', found.now),
    figures: answer.table(),
  };
}

function probeOf(
  answer: AnswerFigures,
  nodes: { leaf: FigureNode; result: FigureNode; target: FigureNode | null },
  id: string,
  probe: Probe,
): z.output<typeof probeSchema> {
  const { leaf, result } = nodes;
  const text = `worked out again with ${leaf.label} at ${probe.value.toString()}`;
  const target = nodes.target ?? { ...result, label: 'target' };
  const made = {
    value: answer.found(`${id}/value`, leaf.label, leaf, {
      value: probe.value,
      text: 'found by trying values',
    }),
    result: probe.result && answer.found(`${id}/result`, result.label, result, { value: probe.result, text }),
    target:
      probe.target &&
      answer.found(`${id}/target`, target.label, target, {
        value: probe.target,
        text: nodes.target ? text : 'asked for',
      }),
  };
  const { result: out, target: wanted } = made;
  const residual =
    out === null || wanted === null || probe.gap === null
      ? null
      : answer.less(`${id}/residual`, `${result.label} less ${target.label}`, [out, wanted], probe.gap);
  return { ...made, residual };
}

const body: z.input<typeof bodySchema> = {
  figures: exampleFigures,
  result: 'price',
  leaf: 'ash/price',
  target: { value: '500' },
};

export const solve = defineContract({
  name: 'solve',
  method: 'POST',
  path: '/api/calculations/solve',
  summary: 'What a value must be for a result',
  description:
    'Takes a table of figures with derivations, a leaf, a result, and a target: a value, or another figure that it is to equal. Many values of the leaf are tried within the bounds, and every place where the target lies between two of them is closed in on, in decimals and with every rounding. Whole packs and rounded prices can step over a target; that, and that it is never reached, are answers with their reason.',
  tag: 'calculations',
  roles: 'anyone',
  body: bodySchema,
  answer: solveAnswerSchema,
  example: { body, answer: solutionOf(bodySchema.parse(body), new Effort()) },
});
