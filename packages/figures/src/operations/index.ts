import { allocate } from './allocate.ts';
import { choose } from './choose.ts';
import { difference } from './difference.ts';
import { greatest } from './greatest.ts';
import { least } from './least.ts';
import { logarithm } from './logarithm.ts';
import type { Operation } from './operation.ts';
import { power } from './power.ts';
import { product } from './product.ts';
import { quotient } from './quotient.ts';
import { round } from './round.ts';
import { roundDown } from './round-down.ts';
import { roundUp } from './round-up.ts';
import { same } from './same.ts';
import { sum } from './sum.ts';

/** Every operation a figure can be derived by, by name. */
export const OPERATIONS = {
  same,
  sum,
  difference,
  product,
  quotient,
  least,
  greatest,
  'round-up': roundUp,
  'round-down': roundDown,
  round,
  power,
  logarithm,
  choose,
  allocate,
} as const satisfies Record<string, Operation>;

export type OperationName = keyof typeof OPERATIONS;
