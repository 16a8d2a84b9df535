import {
  acceptOffer,
  addressOf,
  type BodyOf,
  declineOffer,
  getOfferPaper,
  getOfferPicture,
  type Offer,
  readOffer,
} from '@scantling/contracts';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { type ApiAnswer, callApi } from '../../../lib/api-client.ts';

export function offerQuery(token: string) {
  return queryOptions({
    queryKey: ['offers', token],
    queryFn: async ({ signal }): Promise<Offer> =>
      (await callApi(readOffer, { params: { token }, signal })).value,
    retry: false,
  });
}

/** An answer to the offer; the page shows the offer as it stands after it, also where somebody was faster. */
function useAnswer<Body>(token: string, answer: (body: Body) => Promise<ApiAnswer<Offer>>) {
  const client = useQueryClient();
  const { queryKey } = offerQuery(token);
  return useMutation({
    mutationFn: answer,
    onSuccess: ({ value }) => client.setQueryData(queryKey, value),
    onError: () => client.invalidateQueries({ queryKey }),
  });
}

export function useAcceptOffer(token: string) {
  return useAnswer(token, (body: BodyOf<typeof acceptOffer>) =>
    callApi(acceptOffer, { params: { token }, body }),
  );
}

export function useDeclineOffer(token: string) {
  return useAnswer(token, (body: BodyOf<typeof declineOffer>) =>
    callApi(declineOffer, { params: { token }, body }),
  );
}

export function offerPaperAddress(token: string): string {
  return addressOf(getOfferPaper, { params: { token } });
}

export function offerPictureAddress(token: string, sha256: string): string {
  return addressOf(getOfferPicture, { params: { token, sha256 } });
}
