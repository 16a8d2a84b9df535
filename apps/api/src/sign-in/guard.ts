import { type Contract, mayCall } from '@scantling/contracts';
import type { FastifyRequest } from 'fastify';
import { RequestProblem } from '../problems/request-problem.ts';
import type { Services } from '../services.ts';
import { type Actor, VISITOR } from './actor.ts';
import { findActor } from './find-actor.ts';

async function actorOrVisitor(request: FastifyRequest, services: Services): Promise<Actor> {
  try {
    return await findActor(request, services);
  } catch (error) {
    if (error instanceof RequestProblem) return VISITOR;
    throw error;
  }
}

/**
 * The hook that finds out who asks and lets through whom the contract names, before a body is read.
 * A visitors' route also answers somebody whose token or demo session does not hold: as a visitor.
 */
export function requireAudience(contract: Contract, services: Services) {
  return async (request: FastifyRequest): Promise<void> => {
    if (contract.roles === 'visitor') {
      request.actor = await actorOrVisitor(request, services);
      return;
    }
    const actor = await findActor(request, services);
    if (actor.kind === 'visitor') throw new RequestProblem('not-signed-in');
    if (!mayCall(actor.role, contract.roles)) throw new RequestProblem('not-allowed');
    request.actor = actor;
  };
}
