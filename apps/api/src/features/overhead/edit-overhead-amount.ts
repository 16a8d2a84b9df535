import { editOverheadAmount } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeOverheadAmount } from './overhead-amount-records.ts';

export const answerEditOverheadAmount = handle(
  editOverheadAmount,
  ({ params, body, expectedVersion, services }) =>
    changeOverheadAmount(services.database, { id: params.id, version: expectedVersion() }, body),
);
