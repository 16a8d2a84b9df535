import { z } from 'zod';
import type { QuoteForm } from './quote-form.ts';

const keptSchema = z.object({
  /** Changes with the shape of what is kept, so that another version of this page leaves it alone. */
  shape: z.literal('quote-form-2'),
  etag: z.string().nullable(),
  version: z.number(),
  form: z.custom<QuoteForm>((value) => typeof value === 'object' && value !== null && 'lines' in value),
});
export type KeptQuote = Omit<z.output<typeof keptSchema>, 'shape'>;

const keyOf = (revisionId: string): string => `quote-draft:${revisionId}`;

/** Keeps unsaved changes in this window of the browser, through reloads and a session that ends; null forgets them. */
export function keepQuote(storage: Storage, revisionId: string, kept: KeptQuote | null): void {
  try {
    if (kept === null) storage.removeItem(keyOf(revisionId));
    else storage.setItem(keyOf(revisionId), JSON.stringify({ shape: 'quote-form-2', ...kept }));
  } catch {
    // A full or forbidden storage keeps nothing; the question before leaving still stands.
  }
}

export function keptQuote(storage: Storage, revisionId: string): KeptQuote | null {
  const text = storage.getItem(keyOf(revisionId));
  if (text === null) return null;
  try {
    const read = keptSchema.safeParse(JSON.parse(text));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}
