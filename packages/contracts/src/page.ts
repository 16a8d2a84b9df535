import { z } from 'zod';

export const MOST_PER_PAGE = 200;

/** Query of every list: `cursor` is the `next` of the page before, `limit` the most items wanted. */
export const pageQuery = z.strictObject({
  cursor: z.string().max(1000).optional(),
  limit: z.coerce.number().int().min(1).max(MOST_PER_PAGE).default(50),
});

/** A page of a list; `next` is null on the last one. */
export function pageOf<Item extends z.ZodType>(item: Item) {
  return z.strictObject({ items: z.array(item), next: z.string().nullable() });
}
