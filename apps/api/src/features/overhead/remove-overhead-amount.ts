import { removeOverheadAmount } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropOverheadAmount } from './overhead-amount-records.ts';

export const answerRemoveOverheadAmount = handle(
  removeOverheadAmount,
  async ({ params, expectedVersion, services }) => {
    await dropOverheadAmount(services.database, { id: params.id, version: expectedVersion() });
    return undefined;
  },
);
