import {
  acceptQuote,
  addToQuote,
  type BodyOf,
  createQuote,
  declineQuote,
  editQuoteDraft,
  removeQuoteDraft,
  renewOfferLink,
  reviseQuote,
  sendQuote,
  withdrawQuote,
} from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** One act on a quote; all that is known of quotes, enquiries and mails is read anew after it. */
function useAct<Given, Answer>(act: (given: Given) => Promise<Answer>) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: act,
    onSuccess: () =>
      Promise.all(
        ['quotes', 'enquiries', 'mails', 'mail'].map((term) =>
          client.invalidateQueries({ queryKey: [term] }),
        ),
      ),
  });
}

export type NewQuote = BodyOf<typeof createQuote>;

export function useCreateQuote() {
  return useAct(({ body, idempotencyKey }: { body: NewQuote; idempotencyKey: string }) =>
    callApi(createQuote, { body, idempotencyKey }),
  );
}

export type QuoteBody = BodyOf<typeof editQuoteDraft>;

export function useEditQuoteDraft(id: string) {
  return useAct(({ body, etag }: { body: QuoteBody; etag: string | null }) =>
    callApi(editQuoteDraft, { params: { id }, body, ifMatch: etag }),
  );
}

export function useRemoveQuoteDraft(id: string) {
  return useAct((etag: string | null) => callApi(removeQuoteDraft, { params: { id }, ifMatch: etag }));
}

export function useSendQuote(id: string) {
  return useAct((etag: string | null) => callApi(sendQuote, { params: { id }, ifMatch: etag }));
}

export function useReviseQuote(id: string) {
  return useAct((idempotencyKey: string) => callApi(reviseQuote, { params: { id }, idempotencyKey }));
}

export function useAddToQuote(quoteId: string) {
  return useAct((idempotencyKey: string) =>
    callApi(addToQuote, { params: { id: quoteId }, body: {}, idempotencyKey }),
  );
}

export function useAcceptQuote(id: string) {
  return useAct(({ body, etag }: { body: BodyOf<typeof acceptQuote>; etag: string | null }) =>
    callApi(acceptQuote, { params: { id }, body, ifMatch: etag }),
  );
}

export function useDeclineQuote(id: string) {
  return useAct(({ reason, etag }: { reason: string; etag: string | null }) =>
    callApi(declineQuote, { params: { id }, body: { reason }, ifMatch: etag }),
  );
}

export function useWithdrawQuote(id: string) {
  return useAct((etag: string | null) => callApi(withdrawQuote, { params: { id }, ifMatch: etag }));
}

export function useRenewOfferLink(id: string) {
  return useMutation({
    mutationFn: async () => (await callApi(renewOfferLink, { params: { id } })).value.linkPath,
  });
}
