import { addressOf, getPicture, type PictureRecord, uploadPicture } from '@scantling/contracts';
import { useMutation } from '@tanstack/react-query';
import { callApi } from './api-client.ts';

/** Endings of the files that can be sent as pictures. */
export const PICTURE_ENDINGS = ['.jpg', '.jpeg', '.png', '.webp'] as const;

/** The most bytes the server takes in one picture. */
export const MOST_PICTURE_BYTES = 25 * 1024 * 1024;

/** Several are sent one after the other, so that the photographs of a telephone do not crowd each other out. */
export function useUploadPicture() {
  return useMutation({
    scope: { id: 'upload-picture' },
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
