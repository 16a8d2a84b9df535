import type { z } from 'zod';
import { problemFrom, unexpectedAnswer, unreachable } from './api-problem.ts';

/** What is needed of a route's contract to call it; paths mark parameters as `:name`. */
export interface CallableRoute {
  readonly method: string;
  readonly path: string;
  readonly answer: z.ZodType;
  readonly params?: z.ZodType;
  readonly query?: z.ZodType;
  readonly body?: z.ZodType;
}

/** What the contract takes in this part, or nothing where it names no schema or none of this part. */
type PartOf<Schema> = Schema extends z.ZodType ? z.input<Schema> : undefined;

/** One request of a route, typed by its contract. */
export interface ApiRequest<Route extends CallableRoute = CallableRoute> {
  readonly params?: PartOf<Route['params']>;
  /** Empty values are left out; lists repeat the name. */
  readonly query?: PartOf<Route['query']>;
  /** Plain values travel as JSON; FormData (files, as the part `file`) as it is. */
  readonly body?: PartOf<Route['body']> | FormData;
  /** The ETag the edit rests on; the server refuses with 412 when it is no longer the newest. */
  readonly ifMatch?: string | null;
  /** One key per intent of the user, kept over retries (see `newIdempotencyKey`). */
  readonly idempotencyKey?: string;
  readonly signal?: AbortSignal;
}

export interface ApiAnswer<Value> {
  readonly value: Value;
  readonly etag: string | null;
}

function entriesOf(part: unknown): [string, unknown][] {
  return typeof part === 'object' && part !== null ? Object.entries(part) : [];
}

/** @throws RangeError when the path names a parameter that was not given */
export function addressOf(
  route: Pick<CallableRoute, 'path'>,
  request: { readonly params?: unknown; readonly query?: unknown },
): string {
  const params = new Map(entriesOf(request.params));
  const path = route.path.replace(/:([A-Za-z]\w*)/g, (_, name: string) => {
    const value = params.get(name);
    if (value === undefined) throw new RangeError(`${route.path} needs "${name}"`);
    return encodeURIComponent(String(value));
  });
  const query = new URLSearchParams();
  for (const [name, given] of entriesOf(request.query)) {
    for (const value of Array.isArray(given) ? given : [given]) {
      if (value !== undefined && value !== null && value !== '') query.append(name, String(value));
    }
  }
  const text = query.toString();
  return text === '' ? path : `${path}?${text}`;
}

function optionsOf(route: CallableRoute, request: ApiRequest): RequestInit {
  const headers = new Headers({ accept: 'application/json' });
  if (request.ifMatch) headers.set('if-match', request.ifMatch);
  if (request.idempotencyKey) headers.set('idempotency-key', request.idempotencyKey);
  const options: RequestInit = { method: route.method.toUpperCase(), headers, credentials: 'same-origin' };
  if (request.signal) options.signal = request.signal;
  const body: unknown = request.body;
  if (body === undefined) return options;
  if (body instanceof FormData) return { ...options, body };
  headers.set('content-type', 'application/json');
  return { ...options, body: JSON.stringify(body) };
}

async function bodyOf(response: Response): Promise<unknown> {
  const text = await response.text();
  if (text === '') return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

/**
 * Calls one route and reads its answer by the contract's schema. For routes that answer with files, take `addressOf`
 * as the href of a link.
 * @throws ApiProblem for every refusal, failure or misunderstood answer; an abort passes through as it is
 */
export async function callApi<Route extends CallableRoute>(
  route: Route,
  request: ApiRequest<Route> = {},
): Promise<ApiAnswer<z.output<Route['answer']>>> {
  let response: Response;
  try {
    response = await fetch(addressOf(route, request), optionsOf(route, request));
  } catch (error) {
    if (error instanceof TypeError) throw unreachable();
    throw error;
  }
  const body = await bodyOf(response);
  if (!response.ok) throw problemFrom(response.status, body);
  const read = route.answer.safeParse(body);
  if (!read.success) throw unexpectedAnswer(response.status, `${route.method.toUpperCase()} ${route.path}`);
  return { value: read.data as z.output<Route['answer']>, etag: response.headers.get('etag') };
}

/** A new key for an intent that creates something; make it when the form opens, not when it is sent. */
export function newIdempotencyKey(): string {
  // randomUUID exists on secure origins only; a workshop may well serve plain http on its own network.
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
