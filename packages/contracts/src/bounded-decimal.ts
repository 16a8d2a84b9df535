import { writtenText } from './written-text.ts';

type Bounds = {
  /** The most digits before and after the point that the record keeps. */
  digits: number;
  places: number;
  isPositive?: boolean;
  example: string;
};

/** A decimal of 0 or more (or above 0) as text, with no more digits than its record keeps. */
export function boundedDecimal({ digits, places, isPositive = false, example }: Bounds) {
  const least = isPositive ? 'above 0' : 'of 0 or more';
  const fraction = places === 0 ? '' : `(?:\\.\\d{1,${places}})?`;
  return writtenText({
    pattern: new RegExp(`^${isPositive ? '(?=.*[1-9])' : ''}\\d{1,${digits}}${fraction}$`),
    message: `is not a decimal number ${least}`,
    mend: `Write a number ${least} with at most ${digits} digits and ${places} decimal places, such as "${example}".`,
    example,
  });
}

/** A share that may be above 1 (a burden, a maintenance share), as text ("0.35" for 35 %). */
export const ratioText = boundedDecimal({ digits: 3, places: 6, example: '0.35' });
