// Where the program runs from source, tests and development, the thread begins here: Node reads no TypeScript as a
// thread's first file.
import { tsImport } from 'tsx/esm/api';

await tsImport('./cutting-worker.ts', import.meta.url);
