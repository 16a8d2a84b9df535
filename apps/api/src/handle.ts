import type { Readable } from 'node:stream';
import type { AnswerOf, Contract, NoContent } from '@scantling/contracts';
import type { FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { RequestProblem } from './problems/request-problem.ts';
import type { Services } from './services.ts';
import type { Actor, KnownActor } from './sign-in/actor.ts';

/** A file a handler answers with, for contracts with `givesFile`. */
export class FileAnswer {
  readonly name: string;
  readonly mediaType: string;
  readonly content: Uint8Array | Readable;
  /** Names bytes that never change under their address, by their SHA-256: they may be kept for good. */
  readonly tag: string | undefined;
  /** Opens in the browser instead of being saved. */
  readonly isInline: boolean;
  constructor(
    name: string,
    mediaType: string,
    content: Uint8Array | Readable,
    options: { tag?: string; isInline?: boolean } = {},
  ) {
    this.name = name;
    this.mediaType = mediaType;
    this.content = content;
    this.tag = options.tag;
    this.isInline = options.isInline ?? false;
  }
}

/** The file of a contract with `takesFile`; the stream must be read to its end or destroyed. */
export type UploadedFile = Readonly<{ name: string; content: Readable }>;

/** One request, checked against its contract. */
export type Call<C extends Contract = Contract> = Readonly<{
  params: z.output<C['params']>;
  query: z.output<C['query']>;
  body: z.output<C['body']>;
  actor: Actor;
  services: Services;
  /** The version named by If-Match, for contracts with `needsIfMatch`. */
  expectedVersion: () => number;
  /** The file sent, for contracts with `takesFile`. @throws RequestProblem where none was sent */
  file: () => Promise<UploadedFile>;
  request: FastifyRequest;
}>;

/** A contract with the function that answers it. */
export type Handler = Readonly<{ contract: Contract; answer: (call: Call) => Promise<unknown> }>;

/** What a handler gives; one without an answer may as well return nothing at all. */
export type Given<C extends Contract> =
  | Promise<AnswerOf<C> | FileAnswer>
  | (C['answer'] extends NoContent ? Promise<void> : never);

/** Ties a function to its contract; the compiler checks what goes in and what comes out. */
export function handle<C extends Contract>(contract: C, answer: (call: Call<C>) => Given<C>): Handler {
  // The mounting code parses with this very contract's schemas before it calls, so the call has the type wanted.
  return { contract, answer: (call) => answer(call as Call<C>) };
}

/** The actor of a route that is not for visitors. @throws RequestProblem not-signed-in */
export function signedIn(actor: Actor): KnownActor {
  if (actor.kind === 'visitor') throw new RequestProblem('not-signed-in');
  return actor;
}
