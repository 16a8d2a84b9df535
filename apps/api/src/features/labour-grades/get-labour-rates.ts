import { getLabourRates } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { workedLabourRates } from './worked-labour-rates.ts';

export const answerGetLabourRates = handle(getLabourRates, ({ query, services }) =>
  workedLabourRates(services.database, { withDerivations: query.working }),
);
