/** A value that JSON can carry. */
type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json };

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function write(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(write).join(',')}]`;
  if (!isObject(value)) return JSON.stringify(value ?? null);
  const fields = Object.keys(value)
    .filter((name) => value[name] !== undefined)
    .sort()
    .map((name) => `${JSON.stringify(name)}:${write(value[name])}`);
  return `{${fields.join(',')}}`;
}

/**
 * The one text of a value, however its fields are ordered: JSON by RFC 8785 (names sorted by UTF-16 code units, no
 * spaces, numbers as ECMAScript writes them). What is hashed is this text.
 */
export function canonicalText(value: Json | object): string {
  return write(value);
}
