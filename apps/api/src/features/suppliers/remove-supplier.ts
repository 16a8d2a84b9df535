import { removeSupplier } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropSupplier } from './supplier-records.ts';

export const answerRemoveSupplier = handle(removeSupplier, async ({ params, expectedVersion, services }) => {
  await dropSupplier(services.database, { id: params.id, version: expectedVersion() });
  return undefined;
});
