import { writtenText } from './written-text.ts';

// 24 digits before and 18 after the point: more than any column keeps, and a text nobody can blow up.
const DIGITS = '\\d{1,24}(?:\\.\\d{1,18})?';
const AS_TEXT = 'Write it as text with digits and a point, such as';

/** Any decimal number, as text. */
export const decimalText = writtenText({
  pattern: new RegExp(`^-?${DIGITS}$`),
  message: 'is not a decimal number',
  mend: `${AS_TEXT} "12.5" or "-0.25".`,
  example: '12.5',
});

/** A decimal number above 0, as text. */
export const positiveDecimalText = writtenText({
  pattern: new RegExp(`^(?=.*[1-9])${DIGITS}$`),
  message: 'is not a decimal number above 0',
  mend: `${AS_TEXT} "12.5"; it must be more than 0.`,
  example: '12.5',
});

/** A decimal number of 0 or more, as text. */
export const nonNegativeDecimalText = writtenText({
  pattern: new RegExp(`^${DIGITS}$`),
  message: 'is not a decimal number of 0 or more',
  mend: `${AS_TEXT} "12.5"; it must not be below 0.`,
  example: '12.5',
});

/** A share of a whole, from 0 to 1, as text ("0.15" for 15 %). */
export const shareText = writtenText({
  pattern: /^(?:0(?:\.\d{1,18})?|1(?:\.0{1,18})?)$/,
  message: 'is not a share from 0 to 1',
  mend: `${AS_TEXT} "0.15" for 15 %.`,
  example: '0.15',
});

/** An amount of money in a currency named beside it, with at most six decimal places, 0 or more, as text. */
export const moneyText = writtenText({
  pattern: /^\d{1,12}(?:\.\d{1,6})?$/,
  message: 'is not an amount of money',
  mend: `${AS_TEXT} "1249.90", without currency sign or thousands separators.`,
  example: '1249.90',
});
