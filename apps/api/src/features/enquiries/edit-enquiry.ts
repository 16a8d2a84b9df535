import { editEnquiry } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { changeEnquiry } from './enquiry-records.ts';

export const answerEditEnquiry = handle(editEnquiry, ({ params, body, expectedVersion, services }) =>
  changeEnquiry(services.database, { id: params.id, version: expectedVersion() }, body),
);
