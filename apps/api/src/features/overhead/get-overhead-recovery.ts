import { getOverheadRecovery } from '@scantling/contracts';
import { handle } from '../../handle.ts';
import { workedRecovery } from './worked-recovery.ts';

export const answerGetOverheadRecovery = handle(getOverheadRecovery, ({ query, services }) =>
  workedRecovery(services, { withDerivations: query.working }),
);
