const STARTS: readonly (readonly [type: PictureType, start: readonly (number | null)[]])[] = [
  ['png', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]],
  ['jpg', [0xff, 0xd8, 0xff]],
  ['webp', [0x52, 0x49, 0x46, 0x46, null, null, null, null, 0x57, 0x45, 0x42, 0x50]],
];

/** What papers can show: pictures of points, whose bytes cannot refer to anything else. */
export type PictureType = 'png' | 'jpg' | 'webp';

/** The kind of picture its first bytes say it is (PNG, JPEG, WebP); null for anything else. */
export function pictureType(bytes: Uint8Array): PictureType | null {
  const found = STARTS.find(([, start]) => start.every((byte, at) => byte === null || bytes[at] === byte));
  return found?.[0] ?? null;
}
