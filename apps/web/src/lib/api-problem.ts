import { z } from 'zod';

const fieldErrorSchema = z.object({
  field: z.string(),
  message: z.string(),
  mend: z.string().optional(),
});

/** What is wrong with one field, and how to mend it. `field` is a path as the request spells it ("lines.3.price"). */
export type FieldError = z.infer<typeof fieldErrorSchema>;

/** The members of RFC 9457 we read, and the shorter form the sign-in library answers with. */
const problemSchema = z.object({
  type: z.string().optional(),
  title: z.string().optional(),
  detail: z.string().optional(),
  instance: z.string().optional(),
  code: z.string().optional(),
  message: z.string().optional(),
  errors: z.array(fieldErrorSchema).optional(),
});

interface ProblemParts {
  readonly status: number;
  readonly title: string;
  readonly type: string;
  readonly detail: string | null;
  /** The request's id, as it stands in the server's log. */
  readonly instance: string | null;
  readonly code: string | null;
  readonly errors: readonly FieldError[];
}

/** A refused or failed call, as RFC 9457 problem details. `status` 0: the server was not reached. */
export class ApiProblem extends Error implements ProblemParts {
  readonly status: number;
  readonly title: string;
  readonly type: string;
  readonly detail: string | null;
  readonly instance: string | null;
  readonly code: string | null;
  readonly errors: readonly FieldError[];

  constructor(parts: ProblemParts) {
    super(parts.detail ?? parts.title);
    this.name = 'ApiProblem';
    this.status = parts.status;
    this.title = parts.title;
    this.type = parts.type;
    this.detail = parts.detail;
    this.instance = parts.instance;
    this.code = parts.code;
    this.errors = parts.errors;
  }
}

const WORDS: Readonly<Record<number, string>> = {
  400: 'The request was not understood',
  401: 'You are not signed in',
  403: 'You may not do this',
  404: 'There is no such thing here',
  409: 'This clashes with what is there',
  412: 'Somebody changed this meanwhile',
  413: 'That is too large',
  422: 'Something in it must be mended',
  429: 'Too many tries; wait a moment',
  503: 'The server is not ready',
};

function wordsFor(status: number): string {
  return WORDS[status] ?? (status >= 500 ? `The server failed (${status})` : `Refused (${status})`);
}

/** Reads the body of a failed answer, whatever it is: problem details, another JSON, text or nothing. */
export function problemFrom(status: number, body: unknown): ApiProblem {
  const read = problemSchema.safeParse(body);
  const found = read.success ? read.data : {};
  return new ApiProblem({
    status,
    title: found.title ?? found.message ?? wordsFor(status),
    type: found.type ?? 'about:blank',
    detail: found.detail ?? null,
    instance: found.instance ?? null,
    code: found.code ?? null,
    errors: found.errors ?? [],
  });
}

/** The server was not reached at all. */
export function unreachable(): ApiProblem {
  return problemFrom(0, {
    title: 'The server cannot be reached',
    detail: 'Check that Scantling is running and try again.',
    code: 'unreachable',
  });
}

/** The server answered, but not in the agreed shape: page and server are of different versions. */
export function unexpectedAnswer(status: number, where: string): ApiProblem {
  return problemFrom(status, {
    title: 'The answer was not understood',
    detail: `The server's answer to ${where} has another shape than this page expects. Load the page again; if it stays, page and server are of different versions.`,
    code: 'unexpected-answer',
  });
}
