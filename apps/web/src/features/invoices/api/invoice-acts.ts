import {
  type BodyOf,
  creditInvoice,
  enterPayment,
  issueInvoice,
  remind,
  reversePayment,
} from '@scantling/contracts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';
import { callApi } from '../../../lib/api-client.ts';
import { useIntentKey } from '../../../lib/record-calls.ts';

/**
 * One act on the money of a quote; invoices, statements and mails are read anew after it. The key it is given stays
 * while the same is sent again after a failure, and is a new one once it went through.
 */
function useAct<Body, Answer>(act: (body: Body, idempotencyKey: string) => Promise<Answer>) {
  const client = useQueryClient();
  const keyFor = useIntentKey();
  const done = useRef(0);
  return useMutation({
    mutationFn: (body: Body) => act(body, keyFor([done.current, body])),
    onSuccess: () => {
      done.current += 1;
      return Promise.all(
        ['invoices', 'mails', 'mail'].map((term) => client.invalidateQueries({ queryKey: [term] })),
      );
    },
  });
}

export function useIssueInvoice(quoteId: string) {
  return useAct((body: BodyOf<typeof issueInvoice>, idempotencyKey) =>
    callApi(issueInvoice, { params: { id: quoteId }, body, idempotencyKey }),
  );
}

export function useEnterPayment(invoiceId: string) {
  return useAct((body: BodyOf<typeof enterPayment>, idempotencyKey) =>
    callApi(enterPayment, { params: { id: invoiceId }, body, idempotencyKey }),
  );
}

export function useReversePayment(paymentId: string) {
  return useAct((body: BodyOf<typeof reversePayment>, idempotencyKey) =>
    callApi(reversePayment, { params: { id: paymentId }, body, idempotencyKey }),
  );
}

export function useCreditInvoice(invoiceId: string) {
  return useAct((body: BodyOf<typeof creditInvoice>, idempotencyKey) =>
    callApi(creditInvoice, { params: { id: invoiceId }, body, idempotencyKey }),
  );
}

/** At most one a day reaches the client, however often it is called. */
export function useRemind(invoiceId: string) {
  return useAct((body: BodyOf<typeof remind>) => callApi(remind, { params: { id: invoiceId }, body }));
}
