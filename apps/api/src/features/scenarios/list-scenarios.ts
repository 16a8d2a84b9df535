import { listScenarios } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { scenariosOf } from './scenario-records.ts';

export const answerListScenarios = handle(listScenarios, async ({ params, services }) => ({
  items: await scenariosOf(services.database, params.id),
}));
