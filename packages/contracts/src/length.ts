import { type LengthUnit, parseLength, UnreadableLengthError } from '@scantling/units';
import { z } from 'zod';

/**
 * A length as people write it ("23 5/8", "600 mm", "1' 11 5/8\""), read to millimetres as decimal text with at most
 * six places. A bare number takes the unit given.
 */
export function lengthText(unit: LengthUnit) {
  return z
    .string()
    .max(60)
    .transform((text, context) => {
      try {
        return parseLength(text, unit).toFixed();
      } catch (error) {
        if (!(error instanceof UnreadableLengthError)) throw error;
        const params = { mend: 'Write it like 600, 600 mm, 60 cm, 0.75 in, 23 5/8" or 1\' 11 5/8".' };
        context.issues.push({
          code: 'custom',
          message: `is no length: ${error.reason}`,
          params,
          input: text,
        });
        return z.NEVER;
      }
    })
    .meta({ examples: ['600 mm', '23 5/8"'] });
}
