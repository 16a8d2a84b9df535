// A spreadsheet runs a cell that begins like this; the apostrophe makes it text. Texts that look guarded already
// get one more, so that reading takes exactly one away again.
const RUNS = /^'*[=+\-@\t\r]/;
const GUARDED = /^'+[=+\-@\t\r]/;

/** Text that no spreadsheet takes for a formula (CSV has no types of its own). */
export function guardText(text: string): string {
  return RUNS.test(text) ? `'${text}` : text;
}

/** Takes the guard away again. */
export function unguardText(text: string): string {
  return GUARDED.test(text) ? text.slice(1) : text;
}
