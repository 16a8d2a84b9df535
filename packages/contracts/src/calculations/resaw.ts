import { CostingInputError, resaw as resawing } from '@scantling/costing';
import { NoAnswerError, toTable } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText } from '../decimal-text.ts';
import { figureId, figureTableSchema } from '../figures.ts';
import { lengthText } from '../length.ts';
import { calculationQuery, type WorkingOptions } from './calculation.ts';

const bodySchema = z.strictObject({
  roughThickness: lengthText('mm'),
  /** mm off both outer faces together before the first cut. */
  cleanUp: decimalText,
  /** mm of the cut, with the re-jointing pass after it. */
  kerf: decimalText,
  /** Of a leaf. */
  finishedThickness: lengthText('mm'),
  /** mm planed off both faces of a leaf together. */
  planing: decimalText,
});

const answerSchema = z.strictObject({
  sawnLeaf: figureId,
  leaves: figureId,
  /** The thickest leaf, as sawn, that so many cuts would still give. */
  thickestSawnLeaf: figureId,
  rest: figureId,
  figures: figureTableSchema,
});

/** @throws CostingInputError, also where fewer than two leaves come out */
export function workOutResaw(
  body: z.output<typeof bodySchema>,
  options: WorkingOptions,
): z.output<typeof answerSchema> {
  const { sawnLeaf, leaves, thickestSawnLeaf, rest } = worked(body);
  const { ids, figures } = toTable({ sawnLeaf, leaves, thickestSawnLeaf, rest }, options);
  return { ...ids, figures };
}

function worked(body: z.output<typeof bodySchema>) {
  try {
    return resawing(body, { currency: 'EUR' });
  } catch (error) {
    if (!(error instanceof NoAnswerError)) throw error;
    const [, reason = error.message] = /^roughThickness: (.*);/.exec(error.message) ?? [];
    throw new CostingInputError(
      'roughThickness',
      `is too little: ${reason}`,
      'use thicker stock or a thinner leaf, or do not resaw it',
    );
  }
}

const body: z.input<typeof bodySchema> = {
  roughThickness: '2 in',
  cleanUp: '3',
  kerf: '3',
  finishedThickness: '1/2 in',
  planing: '1.5',
};

export const resaw = defineContract({
  name: 'resaw',
  method: 'POST',
  path: '/api/calculations/resaw',
  summary: 'Leaves from thick stock',
  description:
    'n = floor((rough - clean-up + kerf) / (sawn leaf + kerf)), at least 2. Thicknesses as people write them, a bare number in mm.',
  tag: 'calculations',
  roles: 'anyone',
  query: calculationQuery,
  body: bodySchema,
  answer: answerSchema,
  example: { body, answer: workOutResaw(bodySchema.parse(body), { withDerivations: true }) },
});
