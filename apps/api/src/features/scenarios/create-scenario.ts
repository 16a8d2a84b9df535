import { createScenario } from '@scantling/contracts';
import { handle, signedIn } from '../../handle.ts';
import { addScenario } from './scenario-records.ts';

export const answerCreateScenario = handle(createScenario, ({ params, body, actor, services }) =>
  services.database.$transaction((transaction) =>
    addScenario(transaction, params.id, body, signedIn(actor).name),
  ),
);
