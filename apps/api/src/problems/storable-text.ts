import type { FieldProblem } from '@scantling/contracts';

// PostgreSQL's text cannot hold U+0000, and a lone surrogate has no UTF-8 form.
function isStorable(text: string): boolean {
  return !text.includes('\u0000') && !/\p{Surrogate}/u.test(text);
}

/** The texts in a request's body that no database could keep as they are. */
export function unstorableTexts(value: unknown, path = ''): FieldProblem[] {
  if (typeof value === 'string')
    return isStorable(value)
      ? []
      : [{ field: path, message: 'holds a character that cannot be kept', mend: 'Remove it.' }];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const field = path === '' ? key : `${path}.${key}`;
    const inKey = isStorable(key) ? [] : unstorableTexts(key, path === '' ? 'body' : path);
    return [...inKey, ...unstorableTexts(inner, field)];
  });
}
