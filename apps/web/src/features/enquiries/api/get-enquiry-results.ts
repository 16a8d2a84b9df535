import { type AnswerOf, getEnquiryResults } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type EnquiryResults = AnswerOf<typeof getEnquiryResults>;

export const enquiryResultsQuery = queryOptions({
  queryKey: ['enquiries', 'results'],
  queryFn: async ({ signal }) =>
    (await callApi(getEnquiryResults, { query: { working: 'true' }, signal })).value,
});
