import type { Contract } from '@scantling/contracts';
import { z } from 'zod';
import type { JsonSchemas } from './json-schemas.ts';

type Parameter = Record<string, unknown>;

function exampleOf(examples: unknown, name: string): Parameter {
  const value: unknown =
    typeof examples === 'object' && examples !== null ? Reflect.get(examples, name) : undefined;
  return value === undefined ? {} : { example: value };
}

function fieldsOf(schema: z.ZodType): [string, z.ZodType][] {
  return schema instanceof z.ZodObject
    ? Object.entries(schema.shape).filter(
        (entry): entry is [string, z.ZodType] => entry[1] instanceof z.ZodType,
      )
    : [];
}

/** Path, query and header parameters of a route. */
export function parametersOf(contract: Contract, schemas: JsonSchemas): Parameter[] {
  const at = (place: string, name: string, schema: z.ZodType) =>
    schemas.add(schema, `${contract.name}-${place}-${name}`, 'input');
  const path = fieldsOf(contract.params).map(([name, schema]) => ({
    name,
    in: 'path',
    required: true,
    schema: at('path', name, schema),
    ...exampleOf(contract.example.params, name),
  }));
  const query = fieldsOf(contract.query).map(([name, schema]) => ({
    name,
    in: 'query',
    required: !schema.safeParse(undefined).success,
    schema: at('query', name, schema),
    ...exampleOf(contract.example.query, name),
  }));
  const text = { type: 'string' };
  const ifMatch = { name: 'If-Match', in: 'header', required: true, schema: text, example: '"3"' };
  const key = {
    name: 'Idempotency-Key',
    in: 'header',
    required: false,
    schema: text,
    example: '7f3a1c7e-6f0e-4c35-9a58-0d8ef3a1b2c4',
  };
  return [
    ...path,
    ...query,
    ...(contract.needsIfMatch ? [ifMatch] : []),
    ...(contract.isIdempotent ? [key] : []),
  ];
}
