import { getEnquiry } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { findEnquiry } from './enquiry-records.ts';

export const answerGetEnquiry = handle(getEnquiry, ({ params, services }) =>
  findEnquiry(services.database, params.id),
);
