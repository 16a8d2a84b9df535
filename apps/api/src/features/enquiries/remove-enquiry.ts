import { removeEnquiry } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropEnquiry } from './enquiry-records.ts';

export const answerRemoveEnquiry = handle(removeEnquiry, async ({ params, expectedVersion, services }) => {
  await dropEnquiry(services.database, { id: params.id, version: expectedVersion() });
  return undefined;
});
