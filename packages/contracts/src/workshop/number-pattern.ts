import { z } from 'zod';

/** The kinds of paper that carry a number of their own; each is counted by itself. */
export const NUMBER_SERIES = ['quote', 'invoice', 'credit-note', 'receipt', 'delivery-note'] as const;
export type NumberSeries = (typeof NUMBER_SERIES)[number];

const YEAR = '{year}';
const COUNTER = /\{0{1,9}\}/g;
const LITERAL = /^[\p{L}\p{N} ./_-]*$/u;
const MEND = 'Write letters, digits, - . / _ and blanks around one counter, such as "Q-{year}-{0000}".';

/** What a pattern has wrong, or undefined. */
function fault(pattern: string): string | undefined {
  const counters = pattern.match(COUNTER) ?? [];
  if (counters.length !== 1) return counters.length === 0 ? 'has no counter' : 'has more than one counter';
  if (pattern.split(YEAR).length > 2) return 'has the year more than once';
  const literals = pattern.replaceAll(YEAR, '').replace(COUNTER, '');
  return LITERAL.test(literals) ? undefined : 'has a character that a number cannot carry';
}

/**
 * How numbers of a series look: `{0000}` is the counter with at least that many digits, `{year}` the year of issue.
 * With the year in it, counting begins anew with every year.
 */
export const numberPatternSchema = z
  .string()
  .trim()
  .max(40)
  .superRefine((pattern, context) => {
    const message = fault(pattern);
    if (message !== undefined) context.addIssue({ code: 'custom', message, params: { mend: MEND } });
  })
  .meta({ examples: ['Q-{year}-{0000}'] });

export function startsAnewEachYear(pattern: string): boolean {
  return pattern.includes(YEAR);
}

/** The number a pattern gives: year of four digits, counter with leading zeros. */
export function writeNumber(pattern: string, { year, count }: { year: number; count: number }): string {
  return pattern
    .replaceAll(YEAR, String(year).padStart(4, '0'))
    .replace(COUNTER, (counter) => String(count).padStart(counter.length - 2, '0'));
}

/** The same for all patterns that give the same numbers but for leading zeros. */
function shapeOf(pattern: string): string {
  return pattern.replace(COUNTER, '{0}').toLowerCase();
}

/** A pattern for each series; no two may look alike, so that a number says what it is a number of. */
export const numberPatternsSchema = z
  .strictObject({
    quote: numberPatternSchema,
    invoice: numberPatternSchema,
    'credit-note': numberPatternSchema,
    receipt: numberPatternSchema,
    'delivery-note': numberPatternSchema,
  })
  .superRefine((patterns, context) => {
    const taken = new Map<string, NumberSeries>();
    for (const series of NUMBER_SERIES) {
      const shape = shapeOf(patterns[series]);
      const other = taken.get(shape);
      if (other === undefined) taken.set(shape, series);
      else
        context.addIssue({
          code: 'custom',
          path: [series],
          message: `gives the same numbers as the pattern of ${other}`,
          params: { mend: 'Give each kind of paper letters of its own.' },
        });
    }
  })
  .meta({ id: 'NumberPatterns' });

export const STARTING_NUMBER_PATTERNS = {
  quote: 'Q-{year}-{0000}',
  invoice: 'INV-{year}-{0000}',
  'credit-note': 'CN-{year}-{0000}',
  receipt: 'R-{year}-{0000}',
  'delivery-note': 'DN-{year}-{0000}',
} as const satisfies Record<NumberSeries, string>;
