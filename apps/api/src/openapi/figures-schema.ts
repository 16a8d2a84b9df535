import { figureTableSchema } from '@scantling/contracts';
import { z } from 'zod';
import type { JsonSchema } from './json-schemas.ts';

/** Where the JSON Schema of a table of figures is served. */
export const FIGURES_SCHEMA_PATH = '/api/schemas/figures.json';

/** The JSON Schema (2020-12) of a table of figures, from the schema that answers are checked against. */
export function figuresSchema(): JsonSchema {
  const { $schema, ...schema } = z.toJSONSchema(figureTableSchema, { io: 'output' });
  return {
    $schema,
    $id: FIGURES_SCHEMA_PATH,
    title: 'Figures of an answer',
    description:
      'Every number with its unit and working, each once under its id; inputs name other ids of the table.',
    ...schema,
  };
}
