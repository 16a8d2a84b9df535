import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

const SECRET_BYTES = 32;

/** A secret of 256 random bits, fit for addresses and headers (base64url, 43 characters). */
export function newSecret(random: (size: number) => Buffer = randomBytes): string {
  return random(SECRET_BYTES).toString('base64url');
}

/**
 * What is kept of a secret: its SHA-256 in hex. No salt and no slow hash, because 256 random bits cannot be guessed.
 */
export function hashOf(secret: string): string {
  return createHash('sha256').update(secret).digest('hex');
}

/** Compares two hashes in a time that does not tell where they differ. */
export function isSameHash(left: string, right: string): boolean {
  const [a, b] = [Buffer.from(left), Buffer.from(right)];
  return a.length === b.length && timingSafeEqual(a, b);
}
