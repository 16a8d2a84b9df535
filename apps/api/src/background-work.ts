import type { StartContext } from './start-job.ts';

/** Work that goes on beside the requests, from when the product is up until it stops. */
export type BackgroundWork = {
  name: string;
  /** Begins it. @returns what ends it, once it has put down what it had in hand */
  start: (context: StartContext) => () => Promise<void>;
};
