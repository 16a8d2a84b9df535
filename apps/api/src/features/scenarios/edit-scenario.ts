import { editScenario } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { changeScenario } from './scenario-records.ts';

export const answerEditScenario = handle(editScenario, ({ params, body, actor, expectedVersion, services }) =>
  services.database.$transaction((transaction) =>
    changeScenario(transaction, { id: params.id, version: expectedVersion() }, body, signedIn(actor).name),
  ),
);
