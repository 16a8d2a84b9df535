import { cuttingPlan } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerCuttingPlan = handle(cuttingPlan, async ({ body, request, services }) => {
  const calling = new AbortController();
  const callOff = () => calling.abort();
  // Nobody waits for the plan any more once the connection is gone.
  const { socket } = request.raw;
  socket.once('close', callOff);
  try {
    const { timeLimitMs } = body;
    const { plan, elapsedMs } = await services.cutting.plan(body, { timeLimitMs, signal: calling.signal });
    return { ...plan, elapsedMs };
  } finally {
    socket.off('close', callOff);
  }
});
