import { z } from 'zod';
import type { Audience } from './roles.ts';

export type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

/** What a route without path parameters, or without a query, takes: nothing, so that a stray name is an error. */
export const NO_FIELDS = z.strictObject({});
export type NoFields = typeof NO_FIELDS;

/** What a route without a body takes, and what one with an empty answer (204) gives. */
export const NO_CONTENT = z.undefined();
export type NoContent = typeof NO_CONTENT;

/** One route, as the server, the web and the API's description all read it. */
export interface Contract<
  Params extends z.ZodType = z.ZodType,
  Query extends z.ZodType = z.ZodType,
  Body extends z.ZodType = z.ZodType,
  Answer extends z.ZodType = z.ZodType,
> {
  /** The name of the contract's file, of its handler's file and of the operation in the API's description. */
  readonly name: string;
  readonly method: Method;
  /** With path parameters as `:id`. */
  readonly path: `/api/${string}`;
  readonly summary: string;
  readonly description: string;
  /** The trade term it belongs to, which is also its folder's name. */
  readonly tag: string;
  readonly roles: Audience;
  readonly params: Params;
  readonly query: Query;
  readonly body: Body;
  readonly answer: Answer;
  /** The status of a good answer. */
  readonly status: number;
  readonly example: {
    readonly params?: unknown;
    readonly query?: unknown;
    readonly body?: unknown;
    readonly answer?: unknown;
  };
  /** A repeated request with the same Idempotency-Key gets the first answer again. */
  readonly isIdempotent: boolean;
  /** Needs If-Match with the ETag of what is changed: 428 without, 412 with another. */
  readonly needsIfMatch: boolean;
  /** Gives an ETag made from the answer's `version`. */
  readonly givesEtag: boolean;
  /** Takes one file as the part `file` of multipart/form-data instead of a JSON body. */
  readonly takesFile: boolean;
  /** Media types of a file it answers with; empty where it answers with JSON. */
  readonly givesFile: readonly string[];
}

interface Definition<
  Params extends z.ZodType,
  Query extends z.ZodType,
  Body extends z.ZodType,
  Answer extends z.ZodType,
> {
  readonly name: string;
  readonly method: Method;
  readonly path: `/api/${string}`;
  readonly summary: string;
  readonly description: string;
  readonly tag: string;
  readonly roles: Audience;
  readonly params?: Params;
  readonly query?: Query;
  readonly body?: Body;
  readonly answer?: Answer;
  readonly status?: number;
  readonly example: {
    readonly params?: z.input<NoInfer<Params>>;
    readonly query?: z.input<NoInfer<Query>>;
    readonly body?: z.input<NoInfer<Body>>;
    readonly answer?: z.input<NoInfer<Answer>>;
  };
  readonly idempotent?: boolean;
  readonly needsIfMatch?: boolean;
  readonly givesEtag?: boolean;
  readonly takesFile?: boolean;
  readonly givesFile?: readonly string[];
}

/**
 * Declares a route. Status is 200 where none is given, 204 where there is no answer either.
 * A test parses the example against the schemas, so it cannot drift.
 */
export function defineContract<
  Params extends z.ZodType = NoFields,
  Query extends z.ZodType = NoFields,
  Body extends z.ZodType = NoContent,
  Answer extends z.ZodType = NoContent,
>(definition: Definition<Params, Query, Body, Answer>): Contract<Params, Query, Body, Answer> {
  const { idempotent, ...rest } = definition;
  const givesNothing = rest.answer === undefined && rest.givesFile === undefined;
  return {
    needsIfMatch: false,
    givesEtag: false,
    takesFile: false,
    givesFile: [],
    status: givesNothing ? 204 : 200,
    ...rest,
    // The type parameters default to just these schemas where a part is left out.
    params: (definition.params ?? NO_FIELDS) as Params,
    query: (definition.query ?? NO_FIELDS) as Query,
    body: (definition.body ?? NO_CONTENT) as Body,
    answer: (definition.answer ?? NO_CONTENT) as Answer,
    isIdempotent: idempotent ?? false,
  };
}

/** What a handler is to return, and what a caller gets. */
export type AnswerOf<C extends Contract> = z.output<C['answer']>;
/** What a caller sends as body. */
export type BodyOf<C extends Contract> = z.input<C['body']>;
/** What a caller sends as query. */
export type QueryOf<C extends Contract> = z.input<C['query']>;
/** What a caller puts into the path. */
export type ParamsOf<C extends Contract> = z.input<C['params']>;
