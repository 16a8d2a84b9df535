import { type AnswerOf, importBill } from '@scantling/contracts';
import { useMutation } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type BillReading = AnswerOf<typeof importBill>;

interface BillFile {
  readonly file: File;
  readonly etag: string | null;
  /** Only look, change nothing. */
  readonly isPreview: boolean;
}

export function useImportBill(id: string) {
  return useMutation({
    mutationFn: ({ file, etag, isPreview }: BillFile) => {
      const body = new FormData();
      body.append('file', file);
      const query = { preview: isPreview ? ('true' as const) : ('false' as const) };
      return callApi(importBill, { params: { id }, query, body, ifMatch: etag });
    },
  });
}
