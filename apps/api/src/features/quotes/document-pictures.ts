import type { ClientDocument } from '@scantling/quoting';
import type { Prisma } from '../../generated/prisma/client.ts';

/** Names of all pictures a document shows, its logo among them. */
export function pictureNames({ workshop, lines, pictures }: ClientDocument): string[] {
  const shown = [...pictures, ...lines.flatMap((line) => line.pictures)].map(({ sha256 }) => sha256);
  return [...new Set(workshop.logo === null ? shown : [workshop.logo.sha256, ...shown])];
}

/** The bytes of all pictures a document shows, by name. */
export async function picturesOf(
  database: Prisma.TransactionClient,
  document: ClientDocument,
): Promise<Map<string, Uint8Array>> {
  const rows = await database.picture.findMany({
    where: { sha256: { in: pictureNames(document) } },
    select: { sha256: true, bytes: true },
  });
  return new Map(rows.map(({ sha256, bytes }) => [sha256, bytes]));
}
