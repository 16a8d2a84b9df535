import type { Contract } from '@scantling/contracts';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { FileAnswer } from './handle.ts';

const A_YEAR_S = 365 * 24 * 60 * 60;

/** RFC 9110, 13.1.2: weak comparison against each tag of the list, or anything at all. */
function hasAlready(header: string | undefined, etag: string): boolean {
  if (header === undefined) return false;
  return header.split(',').some((tag) => ['*', etag, `W/${etag}`].includes(tag.trim()));
}

/** Answers with a file; one that never changes may be kept, by this reader alone since it needs a sign-in. */
export function sendFile(
  contract: Contract,
  request: FastifyRequest,
  reply: FastifyReply,
  file: FileAnswer,
): FastifyReply {
  if (!contract.givesFile.includes(file.mediaType))
    throw new TypeError(`${contract.name} does not declare files of ${file.mediaType}`);
  if (file.tag !== undefined) {
    const etag = `"${file.tag}"`;
    reply.header('etag', etag).header('cache-control', `private, max-age=${A_YEAR_S}, immutable`);
    if (hasAlready(request.headers['if-none-match'], etag)) return reply.code(304).send();
  }
  // The plain name is for old programs; the other carries any letter (RFC 6266, RFC 8187).
  const plain = file.name.replace(/[^\w.-]+/g, '-');
  const encoded = encodeURIComponent(file.name).replace(/['()*]/g, (c) => `%${c.charCodeAt(0).toString(16)}`);
  const how = file.isInline ? 'inline' : 'attachment';
  return reply
    .header('content-disposition', `${how}; filename="${plain}"; filename*=UTF-8''${encoded}`)
    .type(file.mediaType)
    .send(file.content);
}
