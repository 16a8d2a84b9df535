import { machineHourRate, workOutMachineHourRate } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerMachineHourRate = handle(machineHourRate, async ({ body, query }) =>
  workOutMachineHourRate(body, { withDerivations: query.working }),
);
