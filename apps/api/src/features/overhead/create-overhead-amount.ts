import { createOverheadAmount } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { addOverheadAmount } from './overhead-amount-records.ts';

export const answerCreateOverheadAmount = handle(createOverheadAmount, ({ body, services }) =>
  addOverheadAmount(services.database, body),
);
