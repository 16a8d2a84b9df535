import {
  addEnquiryHours,
  type BodyOf,
  type EnquiryHoursRecord,
  listEnquiryHours,
  removeEnquiryHours,
} from '@scantling/contracts';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';
import { everyItem } from '../../../lib/record-calls.ts';

export type EnquiryHoursBody = BodyOf<typeof addEnquiryHours>;

export function enquiryHoursQuery(id: string) {
  return queryOptions({
    queryKey: ['enquiries', 'hours', id],
    queryFn: ({ signal }) => everyItem<EnquiryHoursRecord>(listEnquiryHours, { params: { id } }, signal),
  });
}

/** Hours on lost enquiries change the overhead too. */
function useStale() {
  const client = useQueryClient();
  return () =>
    Promise.all([
      client.invalidateQueries({ queryKey: ['enquiries'] }),
      client.invalidateQueries({ queryKey: ['overhead'] }),
    ]);
}

export function useAddEnquiryHours(id: string) {
  const onSuccess = useStale();
  return useMutation({
    mutationFn: ({ body, idempotencyKey }: { body: EnquiryHoursBody; idempotencyKey: string }) =>
      callApi(addEnquiryHours, { params: { id }, body, idempotencyKey }),
    onSuccess,
  });
}

export function useRemoveEnquiryHours(id: string) {
  const onSuccess = useStale();
  return useMutation({
    mutationFn: (hoursId: string) => callApi(removeEnquiryHours, { params: { id, hoursId } }),
    onSuccess,
  });
}
