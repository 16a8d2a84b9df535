import type { Contract, ShownPictures } from '@scantling/contracts';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { z } from 'zod';
import { type ApiAnswer, type CallableRoute, callApi } from './api-client.ts';
import { ApiProblem } from './api-problem.ts';
import { arrangementOf, type PictureAct, type PictureWords } from './picture-arrangement.ts';
import { useIntentKey } from './record-calls.ts';

type Answering = CallableRoute & { readonly answer: z.ZodType<ShownPictures> };

/** The three routes for the pictures of a kind of record. */
interface PictureContracts {
  readonly get: Answering;
  readonly add: Answering & Pick<Contract, 'roles'>;
  readonly edit: Answering & Pick<Contract, 'roles'>;
}

/** The query of a record's pictures, and the routes its mutations go to. */
export function pictureCalls(term: string, contracts: PictureContracts) {
  const query = (id: string) =>
    queryOptions({
      queryKey: [term, 'pictures', id],
      queryFn: ({ signal }): Promise<ApiAnswer<ShownPictures>> =>
        callApi<Answering>(contracts.get, { params: { id }, signal }),
    });
  return { term, contracts, query };
}

export type PictureCalls = ReturnType<typeof pictureCalls>;

/** Adds a picture after the others; lists that show a cover are read anew. */
export function useAddPicture({ term, contracts, query }: PictureCalls, id: string) {
  const client = useQueryClient();
  const keyFor = useIntentKey();
  return useMutation({
    mutationFn: (body: PictureWords) =>
      callApi<Answering>(contracts.add, { params: { id }, body, idempotencyKey: keyFor(body) }),
    onSuccess: (answer) => {
      client.setQueryData(query(id).queryKey, answer);
      void client.invalidateQueries({ queryKey: [term, 'list'] });
    },
  });
}

/**
 * Moves pictures, changes their words, takes them out: one act after the other, each upon what the one before left,
 * and shown before the server has answered. Where somebody else changed them meanwhile, the act is given up and their
 * list is shown.
 */
export function usePictureActs({ term, contracts, query }: PictureCalls, id: string) {
  const client = useQueryClient();
  const { queryKey } = query(id);
  const [underWay, setUnderWay] = useState<readonly PictureAct[]>([]);
  const edit = useMutation({
    scope: { id: JSON.stringify(queryKey) },
    mutationFn: async (act: PictureAct) => {
      const { value, etag } = client.getQueryData(queryKey) ?? (await client.fetchQuery(query(id)));
      const body = arrangementOf(act(value.items));
      return callApi<Answering>(contracts.edit, { params: { id }, body, ifMatch: etag });
    },
    onSuccess: (answer) => {
      client.setQueryData(queryKey, answer);
      void client.invalidateQueries({ queryKey: [term, 'list'] });
    },
    onError: async (error) => {
      if (error instanceof ApiProblem && error.status === 412) await client.refetchQueries({ queryKey });
    },
    onSettled: (_answer, _error, act) => setUnderWay((acts) => acts.filter((one) => one !== act)),
  });
  const act = (next: PictureAct, onSuccess?: () => void): void => {
    setUnderWay((acts) => [...acts, next]);
    edit.mutate(next, onSuccess === undefined ? {} : { onSuccess });
  };
  return { act, underWay, error: edit.error, isPending: underWay.length > 0 };
}
