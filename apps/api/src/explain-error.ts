/** What failed and what to do about it, for a terminal; an error of ours explains itself without its stack. */
export function explain(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  if (!('code' in error)) return error.stack ?? error.message;
  return 'mend' in error ? `${error.message}\n${String(error.mend)}` : error.message;
}
