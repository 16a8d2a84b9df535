import { risk } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerRisk = handle(risk, ({ body, services, request }) =>
  services.calculations.ask('risk', body, request),
);
