import { z } from 'zod';

/** True for text that stays on one line and holds nothing invisible: no control characters, no line separators. */
export function isOneLine(text: string): boolean {
  return !/[\p{Cc}\p{Zl}\p{Zp}]/u.test(text);
}

/** A text of one line with a length at most; blanks at both ends are dropped. */
export function singleLine(longest: number) {
  return z
    .string()
    .trim()
    .max(longest)
    .refine(isOneLine, {
      error: 'holds a line break or another control character',
      params: { mend: 'Write it on one line.' },
    });
}
