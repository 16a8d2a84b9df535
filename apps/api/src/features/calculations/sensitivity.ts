import { sensitivity } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerSensitivity = handle(sensitivity, ({ body, services, request }) =>
  services.calculations.ask('sensitivity', body, request),
);
