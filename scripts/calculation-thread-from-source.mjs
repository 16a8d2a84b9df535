// The thread for calculations where nothing is built (npm run dev, tests): a thread has no loader for TypeScript.
import { tsImport } from 'tsx/esm/api';

const thread = await tsImport('../apps/api/src/calculation-threads/calculation-thread.ts', import.meta.url);

export const { answerQuestion } = thread;
