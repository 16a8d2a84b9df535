import { DOMAIN_PROBLEMS, type ProblemRow } from './domain-problems.ts';

/** Every code a person or a program can meet, with its status and title. Domain code knows no status. */
export const PROBLEM_TABLE = {
  ...DOMAIN_PROBLEMS,
  'already-exists': { status: 409, title: 'It exists already', mend: 'Choose another name or code.' },
  'calculation-too-slow': {
    status: 503,
    title: 'The calculation took too long',
    mend: 'Ask about fewer figures, leaves or samples, or try again when less is going on.',
  },
  'calculations-busy': {
    status: 503,
    title: 'Too many calculations are under way',
    mend: 'Try again in a minute.',
  },
  'demo-only-here': {
    status: 403,
    title: 'The demo can be used on its own machine only',
    mend: 'Open http://localhost or http://127.0.0.1 on the machine that runs the program, or sign in as another person.',
  },
  'idempotency-in-flight': {
    status: 409,
    title: 'The first request with this key is still being answered',
    mend: 'Wait a moment and send the same request again.',
  },
  'idempotency-key-invalid': {
    status: 400,
    title: 'The idempotency key cannot be used',
    mend: 'Send 1 to 200 printable characters, best a fresh UUID.',
  },
  'idempotency-key-reused': {
    status: 422,
    title: 'This idempotency key was used for another request',
    mend: 'Send a fresh key with every new request.',
  },
  'import-not-ready': {
    status: 409,
    title: 'The import is not at that step',
    mend: 'Read the import and do what its status asks for.',
  },
  'import-unreadable': {
    status: 422,
    title: 'Rows of the file cannot be read',
    mend: 'Mend the rows named and send the file again, or leave them out on purpose.',
  },
  'input-invalid': { status: 422, title: 'The input cannot be used', mend: 'Correct the fields named.' },
  'last-owner': {
    status: 409,
    title: 'The last owner stays',
    mend: 'Make another person owner first.',
  },
  'mail-not-ready': {
    status: 409,
    title: 'The mail is not at that step',
    mend: 'Read the mail again and do what its state allows.',
  },
  'media-type-unknown': {
    status: 415,
    title: 'The kind of content is not understood',
    mend: 'Send application/json, or multipart/form-data where a file is wanted.',
  },
  'method-not-allowed': {
    status: 405,
    title: 'This address does not take that method',
    mend: 'Use one of the methods in the Allow header.',
  },
  'not-allowed': {
    status: 403,
    title: 'Your role does not allow this',
    mend: 'Ask an owner to do it or to change your role.',
  },
  'not-found': { status: 404, title: 'Not found', mend: 'Check the address.' },
  'not-ready': { status: 503, title: 'The database does not answer', mend: 'Try again in a moment.' },
  'not-signed-in': {
    status: 401,
    title: 'Not signed in',
    mend: 'Sign in, or send an API token as "Authorization: Bearer ...".',
  },
  'offer-closed': {
    status: 409,
    title: 'This offer cannot be answered any more',
    mend: 'Ask the workshop that sent it.',
  },
  'origin-refused': {
    status: 403,
    title: 'The request came from another site',
    mend: 'Send it from a page of this site, or with an API token instead of the sign-in cookie.',
  },
  'request-malformed': { status: 400, title: 'The request cannot be read', mend: 'Send well-formed JSON.' },
  'request-too-large': { status: 413, title: 'Too much in one request', mend: 'Send less at a time.' },
  'set-up-refused': {
    status: 403,
    title: 'The set-up link does not hold',
    mend: 'Use the newest link printed in the terminal; it works once, and only while nobody can sign in.',
  },
  'sign-in-failed': {
    status: 401,
    title: 'E-mail address or password is wrong',
    mend: 'Check both and try again.',
  },
  'sign-in-refused': {
    status: 400,
    title: 'The sign-in request cannot be used',
    mend: 'Check what was sent.',
  },
  'still-in-use': { status: 409, title: 'Something else still uses it', mend: 'Remove what uses it first.' },
  'too-many-requests': {
    status: 429,
    title: 'Too many attempts',
    mend: 'Wait for the seconds in the Retry-After header and try again.',
  },
  unexpected: {
    status: 500,
    title: 'Something went wrong here',
    mend: 'Try again; if it stays, look up the request id in the log.',
  },
  'version-needed': {
    status: 428,
    title: 'The version that is changed must be named',
    mend: 'Read the record first and send its ETag as If-Match.',
  },
  'version-stale': {
    status: 412,
    title: 'It was changed in the meantime',
    mend: 'Read it again, then repeat the change.',
  },
} as const satisfies Record<string, ProblemRow>;

export type ProblemCode = keyof typeof PROBLEM_TABLE;

export function isProblemCode(code: unknown): code is ProblemCode {
  return typeof code === 'string' && Object.hasOwn(PROBLEM_TABLE, code);
}
