import { getDesign } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { findDesign } from './design-records.ts';

export const answerGetDesign = handle(getDesign, async ({ params, services }) => {
  const design = await findDesign(services.database, params.id);
  if (design === null) throw notFound('design');
  return design;
});
