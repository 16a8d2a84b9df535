import { getOverheadAmount } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findOverheadAmount } from './overhead-amount-records.ts';

export const answerGetOverheadAmount = handle(getOverheadAmount, ({ params, services }) =>
  findOverheadAmount(services.database, params.id),
);
