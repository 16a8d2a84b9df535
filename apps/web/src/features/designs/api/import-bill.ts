import { type AnswerOf, importBill } from '@scantling/contracts';
import type { BillMapping } from '@scantling/costing';
import { useMutation } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

export type BillReading = AnswerOf<typeof importBill>;

interface BillFile {
  readonly file: File;
  readonly etag: string | null;
  /** Only look, change nothing. */
  readonly isPreview: boolean;
  /** Which column is which, where somebody said it; kept for later files. */
  readonly mapping?: BillMapping | undefined;
}

export function useImportBill(id: string) {
  return useMutation({
    mutationFn: ({ file, etag, isPreview, mapping }: BillFile) => {
      const body = new FormData();
      body.append('file', file);
      const query = {
        preview: isPreview ? ('true' as const) : ('false' as const),
        ...(mapping === undefined ? {} : { mapping: JSON.stringify(mapping) }),
      };
      return callApi(importBill, { params: { id }, query, body, ifMatch: etag });
    },
  });
}
