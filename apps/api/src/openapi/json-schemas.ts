import { z } from 'zod';

export type JsonSchema = Record<string, unknown>;
export type Direction = 'input' | 'output';

const LOCAL = '#/$defs/';
const SHARED = '#/components/schemas/';

/** A copy with every `$ref` moved; texts that are no references stay. */
function withMovedRefs(part: unknown, move: (reference: string) => string): unknown {
  if (Array.isArray(part)) return part.map((inner) => withMovedRefs(inner, move));
  if (typeof part !== 'object' || part === null) return part;
  return Object.fromEntries(
    Object.entries(part).map(([key, value]) => [
      key,
      key === '$ref' && typeof value === 'string' ? move(value) : withMovedRefs(value, move),
    ]),
  );
}

function movedSchema(schema: object, move: (reference: string) => string): JsonSchema {
  return { ...(withMovedRefs(schema, move) as object) };
}

/**
 * Turns contracts' schemas into JSON Schema (2020-12) and gathers the named ones under `components/schemas`:
 * a reference inside a part of the document would otherwise point to the document's own root.
 */
export class JsonSchemas {
  readonly #named: Record<string, JsonSchema> = {};

  /** @param place names what has no name of its own ("CreateUserBody") */
  add(schema: z.ZodType, place: string, direction: Direction): JsonSchema {
    const made = z.toJSONSchema(schema, { io: direction, unrepresentable: 'any' });
    const { $schema: _dialect, $defs = {}, ...whole } = made;
    const move = (reference: string): string => {
      if (reference === '#') return `${SHARED}${place}`;
      if (!reference.startsWith(LOCAL)) return reference;
      return `${SHARED}${this.#nameFor(reference.slice(LOCAL.length), place, direction)}`;
    };
    for (const [name, inner] of Object.entries($defs))
      this.#named[this.#nameFor(name, place, direction)] = movedSchema(inner, move);
    const moved = movedSchema(whole, move);
    if (!JSON.stringify(whole).includes('"$ref":"#"')) return moved;
    this.#named[place] = moved;
    return { $ref: `${SHARED}${place}` };
  }

  /** Everything gathered so far, by name. */
  named(): Readonly<Record<string, JsonSchema>> {
    return this.#named;
  }

  // What goes in may differ from what comes out: a default is optional there.
  #nameFor(name: string, place: string, direction: Direction): string {
    if (name.startsWith('__')) return `${place}${name.slice(2)}`;
    return direction === 'input' ? `${name}Input` : name;
  }
}
