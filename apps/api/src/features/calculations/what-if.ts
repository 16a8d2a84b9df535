import { whatIf } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerWhatIf = handle(whatIf, ({ body, services, request }) =>
  services.calculations.ask('whatIf', body, request),
);
