import { removeScenario } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { dropScenario } from './scenario-records.ts';

export const answerRemoveScenario = handle(removeScenario, ({ params, expectedVersion, services }) =>
  dropScenario(services.database, { id: params.id, version: expectedVersion() }),
);
