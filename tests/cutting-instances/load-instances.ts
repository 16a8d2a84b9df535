import { readdirSync, readFileSync } from 'node:fs';
import type { CuttingInstance } from '@scantling/cutting';
import { z } from 'zod';

/** A published instance or an invented shop order, with its source and the best cost or value known for it. */
export interface KnownInstance {
  readonly name: string;
  readonly instance: CuttingInstance;
  readonly best: { readonly value: number; readonly isProven: boolean; readonly by: string };
  readonly source: { readonly set: string; readonly paper: string | null; readonly licence: string };
}

const size = z.object({ id: z.string(), length: z.number(), width: z.number().exactOptional() });
const fileSchema = z.object({
  schema: z.literal(1),
  name: z.string(),
  kind: z.enum(['1d', '2d-guillotine']),
  objective: z.enum(['min-cost', 'max-value']),
  kerf: z.number(),
  trim: z.number().exactOptional(),
  stages: z.number().exactOptional(),
  firstCut: z.enum(['crosscut', 'rip']).exactOptional(),
  stock: z.array(
    size.extend({
      cost: z.number(),
      available: z.number().exactOptional(),
      offcut: z.boolean().exactOptional(),
    }),
  ),
  parts: z.array(
    size.extend({
      quantity: z.number(),
      rotatable: z.boolean().exactOptional(),
      value: z.number().exactOptional(),
    }),
  ),
  bestKnown: z.object({ value: z.number(), proven: z.boolean(), by: z.string() }),
  source: z.object({ set: z.string(), paper: z.string().nullable(), licence: z.string() }),
});

const FOLDER = new URL('.', import.meta.url);

/** All instances of the folder, in the order of their names. */
export function loadInstances(): KnownInstance[] {
  return readdirSync(FOLDER)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map((file) => {
      const {
        schema: _schema,
        name,
        bestKnown,
        source,
        ...instance
      } = fileSchema.parse(JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8')));
      const { value, proven, by } = bestKnown;
      return { name, instance, best: { value, isProven: proven, by }, source };
    });
}
