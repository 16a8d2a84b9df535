import { getHealth } from '@scantling/contracts';
import { handle } from '../../handle.ts';

export const answerGetHealth = handle(getHealth, async () => ({ status: 'running' as const }));
