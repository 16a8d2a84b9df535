import { z } from 'zod';

const estimateSchema = z.object({
  id: z.string(),
  low: z.string(),
  likely: z.string(),
  high: z.string(),
  /** Values of one name move together. */
  group: z.string().optional(),
});

/** Least, likely and greatest of an input, given here; decimal text in the unit of its figure. */
export type GivenEstimate = z.output<typeof estimateSchema>;

/** What an address says of a question of risk, so that the same answer can be sent to somebody. */
export interface RiskSearch {
  readonly pieces?: string;
  readonly price?: string;
  readonly shape?: string;
  /** Set where hours are independent of each other too. */
  readonly alone?: string;
  readonly percentile?: string;
  readonly samples?: string;
  readonly seed?: string;
  readonly estimates?: readonly GivenEstimate[];
}

const NAMES = ['pieces', 'price', 'shape', 'alone', 'percentile', 'samples', 'seed'] as const;

export function riskIn(search: Readonly<Record<string, unknown>>): RiskSearch {
  const given = NAMES.flatMap((name) => {
    const value = search[name];
    return value === undefined || value === null || value === '' ? [] : [[name, String(value)] as const];
  });
  const estimates = z.array(estimateSchema).safeParse(search.estimates);
  return {
    ...Object.fromEntries(given),
    ...(estimates.success && estimates.data.length > 0 ? { estimates: estimates.data } : {}),
  };
}

export const USUAL_SEED = '1';
export const USUAL_SAMPLES = '10000';
export const USUAL_PERCENTILE = '80';
