import { PROBLEM_MEDIA_TYPE, type Problem } from '@scantling/contracts';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { problemOfError } from './problem-of-error.ts';
import { PROBLEM_TABLE } from './problem-table.ts';

/** Answers with problem details (RFC 9457); faults of ours are logged with their cause, never shown. */
export function sendProblem(request: FastifyRequest, reply: FastifyReply, error: unknown): FastifyReply {
  const problem = problemOfError(error);
  const { status, title } = PROBLEM_TABLE[problem.code];
  if (status >= 500) request.log.error({ err: problem.cause ?? problem }, problem.code);
  else request.log.info({ code: problem.code, errors: problem.errors }, problem.message);
  const body: Problem = {
    type: `/api/docs#problem-${problem.code}`,
    title,
    status,
    detail: problem.message,
    instance: request.id,
    code: problem.code,
    errors: [...problem.errors],
  };
  // The id is set here too, because a request can fail before any hook ran.
  // A file answer may have set its own type and ETag before it failed.
  reply.removeHeader('etag');
  reply.removeHeader('content-disposition');
  return reply
    .code(status)
    .headers(problem.headers)
    .header('cache-control', 'no-store')
    .header('x-request-id', request.id)
    .type(PROBLEM_MEDIA_TYPE)
    .serializer(JSON.stringify)
    .send(body);
}
