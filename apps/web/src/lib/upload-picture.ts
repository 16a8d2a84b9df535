import { addressOf, getPicture, type PictureRecord, uploadPicture } from '@scantling/contracts';
import { useMutation } from '@tanstack/react-query';
import { callApi } from './api-client.ts';

/** Endings of the files that can be sent as pictures. */
export const PICTURE_ENDINGS = ['.jpg', '.jpeg', '.png', '.webp'] as const;

export function useUploadPicture() {
  return useMutation({
    mutationFn: async (file: File): Promise<PictureRecord> => {
      const body = new FormData();
      body.append('file', file);
      return (await callApi(uploadPicture, { body })).value;
    },
  });
}

/** Where a picture is read from; it never changes there. */
export function pictureAddress(sha256: string, size: 'full' | 'thumbnail' = 'full'): string {
  return addressOf(getPicture, { params: { sha256 }, query: { size } });
}
