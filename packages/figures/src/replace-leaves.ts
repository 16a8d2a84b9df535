import { Decimal, type DecimalLike, decimal } from '@scantling/decimals';
import type { Figure, Input } from './figure.ts';
import { undatedKey } from './leaf-key.ts';
import { OPERATIONS } from './operations/index.ts';
import { NoAnswerError } from './operations/operation.ts';
import type { Source } from './source.ts';

/** What stands in for a leaf. */
export interface LeafReplacement {
  readonly value: DecimalLike;
  /** Where the new value comes from, told with the leaf that it stands in for. */
  readonly source: (leaf: Figure & { readonly how: Input }) => Source;
}

function isFigure(value: object): value is Figure {
  return 'how' in value && 'unit' in value && 'value' in value && value.value instanceof Decimal;
}

function isPlain(value: object): boolean {
  const prototype = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}

/**
 * Works figures out again with some leaves replaced, by key; the rest stays the same object. One replacer serves a whole
 * answer, so that a shared input stays shared.
 */
export class LeafReplacer {
  readonly #replacements: ReadonlyMap<string, LeafReplacement>;
  readonly #made = new WeakMap<object, object>();
  readonly #met = new Set<string>();

  constructor(replacements: Readonly<Record<string, LeafReplacement>>) {
    this.#replacements = new Map(
      Object.entries(replacements).map(([key, replacement]) => [undatedKey(key), replacement]),
    );
  }

  /** The keys of the replacements whose leaves were met so far, without the day a leaf is of. */
  get met(): ReadonlySet<string> {
    return this.#met;
  }

  /** Every figure anywhere in a plain structure. @throws NoAnswerError where the new values leave no answer */
  within<T>(structure: T): T {
    if (this.#replacements.size === 0) return structure;
    return this.#rebuilt(structure) as T;
  }

  #rebuilt(value: unknown): unknown {
    if (typeof value !== 'object' || value === null) return value;
    const known = this.#made.get(value);
    if (known) return known;
    const made = this.#make(value);
    this.#made.set(value, made);
    return made;
  }

  #make(value: object): object {
    if (isFigure(value)) return this.#figure(value);
    if (Array.isArray(value)) {
      const items = value.map((item) => this.#rebuilt(item));
      return items.some((item, at) => item !== value[at]) ? items : value;
    }
    if (!isPlain(value)) return value;
    const before = Object.entries(value);
    const after = before.map(([name, inner]) => [name, this.#rebuilt(inner)] as const);
    return after.some(([, inner], at) => inner !== before[at]?.[1]) ? Object.fromEntries(after) : value;
  }

  #figure(figure: Figure): Figure {
    const { how } = figure;
    if (how.kind === 'input') return this.#leaf({ ...figure, how }) ?? figure;
    const inputs = how.inputs.map((inner) => this.#rebuilt(inner) as Figure);
    if (inputs.every((inner, at) => inner === how.inputs[at])) return figure;
    const value = OPERATIONS[how.kind].evaluate(
      inputs.map((inner) => inner.value),
      how.settings ?? {},
    );
    if (!value.isFinite()) throw new NoAnswerError(`${figure.label} has no answer`);
    return { ...figure, value, how: { ...how, inputs } };
  }

  #leaf(leaf: Figure & { readonly how: Input }): Figure | null {
    const key = undatedKey(leaf.how.key);
    const replacement = this.#replacements.get(key);
    if (replacement === undefined) return null;
    this.#met.add(key);
    const { how } = leaf;
    return { ...leaf, value: decimal(replacement.value), how: { ...how, source: replacement.source(leaf) } };
  }
}
