import type { FieldProblem } from '@scantling/contracts';
import { Prisma } from '../generated/prisma/client.ts';
import { isProblemCode, PROBLEM_TABLE, type ProblemCode } from './problem-table.ts';
import { RequestProblem } from './request-problem.ts';

// Error codes of the HTTP framework; the rest of its 4xx errors are requests that cannot be read.
const FRAMEWORK_CODES: Readonly<Record<string, ProblemCode>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: 'request-too-large',
  FST_REQ_FILE_TOO_LARGE: 'request-too-large',
  FST_FILES_LIMIT: 'request-too-large',
  FST_FIELDS_LIMIT: 'request-too-large',
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'media-type-unknown',
  FST_INVALID_MULTIPART_CONTENT_TYPE: 'media-type-unknown',
};

// Prisma's error reference: P2002 unique constraint, P2003 foreign key, P2025 record not found, P1xxx connection.
const DATABASE_CODES: Readonly<Record<string, ProblemCode>> = {
  P2002: 'already-exists',
  P2003: 'still-in-use',
  P2025: 'not-found',
  P1001: 'not-ready',
  P1002: 'not-ready',
  P1017: 'not-ready',
};

function textOf(error: object, name: 'code' | 'field' | 'reason' | 'mend'): string | undefined {
  const value: unknown = Reflect.get(error, name);
  return typeof value === 'string' ? value : undefined;
}

function statusOf(error: object): number {
  const status: unknown = Reflect.get(error, 'statusCode');
  return typeof status === 'number' ? status : 500;
}

/** The field a domain error names, as an entry of `errors`. */
function fieldsOf(error: Error, code: ProblemCode): FieldProblem[] {
  const field = textOf(error, 'field');
  if (field === undefined) return [];
  return [
    {
      field,
      message: textOf(error, 'reason') ?? error.message,
      mend: textOf(error, 'mend') ?? PROBLEM_TABLE[code].mend,
    },
  ];
}

/** Turns anything thrown while a request was answered into one of our problems; what is unknown stays unsaid. */
export function problemOfError(error: unknown): RequestProblem {
  if (error instanceof RequestProblem) return error;
  if (!(error instanceof Error)) return new RequestProblem('unexpected', { cause: error });
  if (error instanceof Prisma.PrismaClientKnownRequestError)
    return new RequestProblem(DATABASE_CODES[error.code] ?? 'unexpected', { cause: error });
  if (error instanceof Prisma.PrismaClientInitializationError)
    return new RequestProblem('not-ready', { cause: error });
  const code = textOf(error, 'code');
  if (isProblemCode(code))
    return new RequestProblem(code, { detail: error.message, errors: fieldsOf(error, code), cause: error });
  const ofFramework = code === undefined ? undefined : FRAMEWORK_CODES[code];
  if (ofFramework !== undefined) return new RequestProblem(ofFramework, { cause: error });
  const status = statusOf(error);
  if (status === 429) return new RequestProblem('too-many-requests', { cause: error });
  if (status >= 400 && status < 500)
    return new RequestProblem('request-malformed', { detail: error.message, cause: error });
  return new RequestProblem('unexpected', { cause: error });
}
