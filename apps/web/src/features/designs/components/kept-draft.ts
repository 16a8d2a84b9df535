import { unitSystemSchema } from '@scantling/contracts';
import { z } from 'zod';

const rowsSchema = z.array(z.object({ key: z.string(), cells: z.record(z.string(), z.string()) })).readonly();

const keptSchema = z.object({
  /** What was read when the changes began; saving with it finds out whether somebody saved meanwhile. */
  etag: z.string().nullable(),
  version: z.number(),
  about: z.object({
    code: z.string(),
    name: z.string(),
    description: z.string(),
    overallSize: z.object({ length: z.string(), width: z.string(), height: z.string() }).nullable(),
  }),
  note: z.string(),
  state: z.object({
    unitSystem: unitSystemSchema,
    bill: z.object({
      assemblies: rowsSchema,
      parts: rowsSchema,
      components: rowsSchema,
      finishes: rowsSchema,
      consumables: rowsSchema,
      operations: rowsSchema,
    }),
    parameters: rowsSchema,
    variants: rowsSchema,
  }),
});

/** Changes of a design that are not saved. */
export type KeptDraft = z.output<typeof keptSchema>;

const keyOf = (designId: string): string => `design-draft:${designId}`;

/** Keeps the changes in this window of the browser, through reloads and a session that ends; null forgets them. */
export function keepDraft(storage: Storage, designId: string, draft: KeptDraft | null): void {
  try {
    if (draft === null) storage.removeItem(keyOf(designId));
    else storage.setItem(keyOf(designId), JSON.stringify(draft));
  } catch {
    // A full or forbidden storage keeps nothing; the question before leaving still stands.
  }
}

/** The changes kept for a design, or null; what another version of this page kept in another shape is left alone. */
export function keptDraft(storage: Storage, designId: string): KeptDraft | null {
  const text = storage.getItem(keyOf(designId));
  if (text === null) return null;
  try {
    const read = keptSchema.safeParse(JSON.parse(text));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}
