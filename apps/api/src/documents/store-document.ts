import { createHash } from 'node:crypto';
import { DOCUMENT_MEDIA_TYPES, type DocumentMediaType } from '@scantling/contracts';
import type { Prisma } from '../generated/prisma/client.ts';
import { notFound } from '../problems/request-problem.ts';

const MOST_BYTES = 50 * 1024 * 1024;

export type DocumentGiven = {
  /** What kind of paper it is ("quote", "invoice"). */
  kind: string;
  /** As somebody who saves it sees it, with its ending. */
  fileName: string;
  mediaType: DocumentMediaType;
  bytes: Uint8Array;
  isDemo?: boolean;
};

export type DocumentRead = Omit<Required<DocumentGiven>, 'bytes'> & {
  id: string;
  sha256: string;
  size: number;
  bytes: Uint8Array<ArrayBuffer>;
  createdAt: Date;
};

/** Without what a file system or a mail header cannot carry; number patterns may hold a slash. */
export function safeFileName(name: string): string {
  const kept = name
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, '')
    .replace(/[\\/:*?"<>|]+/g, '-')
    .replace(/^[.\s]+|[.\s]+$/g, '')
    .slice(0, 150);
  return kept === '' ? 'document' : kept;
}

/**
 * Keeps bytes as they are sent or published, for good. There is no way to change them afterwards.
 * @throws RangeError for an empty document or one over 50 MB, which our own code would have made
 */
export async function storeDocument(
  transaction: Prisma.TransactionClient,
  { kind, fileName, mediaType, bytes, isDemo = false }: DocumentGiven,
): Promise<{ id: string; sha256: string }> {
  if (bytes.length === 0 || bytes.length > MOST_BYTES)
    throw new RangeError(`a document of ${bytes.length} bytes is not kept`);
  const data = {
    kind,
    fileName: safeFileName(fileName),
    mediaType,
    sha256: createHash('sha256').update(bytes).digest('hex'),
    size: bytes.length,
    bytes: Uint8Array.from(bytes),
    isDemo,
  };
  return transaction.storedDocument.create({ data, select: { id: true, sha256: true } });
}

function isMediaType(text: string): text is DocumentMediaType {
  return DOCUMENT_MEDIA_TYPES.some((known) => known === text);
}

/** A document with its bytes, exactly as it was stored. @throws RequestProblem not-found */
export async function readDocument(database: Prisma.TransactionClient, id: string): Promise<DocumentRead> {
  const row = await database.storedDocument.findUnique({ where: { id } });
  if (row === null) throw notFound('document');
  if (!isMediaType(row.mediaType)) throw new TypeError(`documents of ${row.mediaType} are not served`);
  return { ...row, mediaType: row.mediaType };
}

/**
 * Removes the demo's documents in the transaction that removes the demo, the one way there is; those that records of
 * the workshop's own rest on become its own.
 */
export async function removeDemoDocuments(
  transaction: Prisma.TransactionClient,
  kept: readonly string[] = [],
): Promise<void> {
  await transaction.$executeRaw`set local scantling.removing_demo = 'on'`;
  await transaction.storedDocument.updateMany({
    where: { isDemo: true, id: { in: [...kept] } },
    data: { isDemo: false },
  });
  await transaction.storedDocument.deleteMany({ where: { isDemo: true } });
  await transaction.$executeRaw`set local scantling.removing_demo = 'off'`;
}
