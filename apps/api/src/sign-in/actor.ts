import type { Role } from '@scantling/contracts';

/** Who asks: a person with a session, a program with a token, or a visitor. */
export type Actor =
  | Readonly<{ kind: 'user' | 'token'; id: string; name: string; role: Role; isDemo: boolean }>
  | Readonly<{ kind: 'visitor' }>;

export type KnownActor = Exclude<Actor, { kind: 'visitor' }>;

export const VISITOR: Actor = { kind: 'visitor' };

/** Names the actor in records ("user:0193...", "token:0193..."). */
export function actorKey(actor: Actor): string {
  return actor.kind === 'visitor' ? 'visitor' : `${actor.kind}:${actor.id}`;
}

declare module 'fastify' {
  interface FastifyRequest {
    actor: Actor;
  }
}
