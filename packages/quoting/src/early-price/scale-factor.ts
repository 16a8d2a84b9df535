import { CostingInputError, type LeafReader } from '@scantling/costing';
import type { DecimalLike } from '@scantling/decimals';
import { constant, derive, type Figure, named, number, scale, share, sum } from '@scantling/figures';
import type { Unit } from '@scantling/units';
import type { OverallSize, ScaleBasis } from './early-price-input.ts';

/**
 * The law of scale: (asked / past) ^ exponent. An exponent of 1 is in proportion; plants are known to follow 0.6
 * ("six-tenths rule", R. Williams, Chemical Engineering 54(12), 1947, cited from memory), furniture has no
 * published one.
 */
export function scaledBy<U extends Unit>(
  label: string,
  asked: Figure<U>,
  past: Figure<NoInfer<U>>,
  exponent: Figure<'ratio'>,
): Figure<'ratio'> {
  if (exponent.value.equals(1)) return share(label, asked, past);
  return derive(label, 'ratio', 'power', [share(`${label}: asked / past`, asked, past), exponent]);
}

type SizeBasis = Extract<ScaleBasis, 'volume' | 'area' | 'length'>;

interface Sizes {
  readonly length: Figure<'mm'>;
  readonly width: Figure<'mm'>;
  readonly height: Figure<'mm'>;
}

/** The overall measures of one piece, read when something grows with them, so that a size nobody needs may be missing. */
export class Measures {
  readonly #given: { readonly size?: OverallSize; readonly count?: DecimalLike };
  readonly #reader: LeafReader;
  readonly #subject: string;
  readonly #known = new Map<SizeBasis, Figure>();

  constructor(
    subject: string,
    given: { readonly size?: OverallSize; readonly count?: DecimalLike },
    reader: LeafReader,
  ) {
    this.#subject = subject;
    this.#given = given;
    this.#reader = reader;
  }

  /** @throws CostingInputError naming the size or the count that is missing */
  of(basis: SizeBasis | 'count'): Figure {
    if (basis === 'count')
      return this.#reader.read('count', this.#given.count, { label: 'count', unit: 'ratio', above: 0 });
    const known = this.#known.get(basis);
    if (known) return known;
    const made = this.#work(basis);
    this.#known.set(basis, made);
    return made;
  }

  #work(basis: SizeBasis): Figure {
    const { length, width, height } = this.#sizes();
    if (basis === 'length') return length;
    if (basis === 'volume') {
      const cubic = constant('cubic metres in a cubic millimetre', 'm3/mm3', '0.000000001');
      return derive(`${this.#subject}: overall volume`, 'm3', 'product', [length, width, height, cubic]);
    }
    const square = constant('square metres in a square millimetre', 'm2/mm2', '0.000001');
    const face = (label: string, a: Figure<'mm'>, b: Figure<'mm'>) =>
      derive(label, 'm2', 'product', [a, b, square]);
    const faces = sum(`${this.#subject}: three sides`, 'm2', [
      face('length × width', length, width),
      face('length × height', length, height),
      face('width × height', width, height),
    ]);
    return scale(`${this.#subject}: area of the six sides`, faces, number(2));
  }

  #sizes(): Sizes {
    const { size } = this.#given;
    if (size === undefined)
      throw new CostingInputError(
        this.#reader.path('size'),
        'is missing',
        'enter overall length, width and height, or let nothing grow with the size',
      );
    const read = (field: keyof OverallSize) =>
      this.#reader.read(`size.${field}`, size[field], { label: `overall ${field}`, unit: 'mm', above: 0 });
    return { length: read('length'), width: read('width'), height: read('height') };
  }
}

/** A factor of exactly 1, for what does not grow. */
export function unchanged(label: string): Figure<'ratio'> {
  return named(label, number(1), 'does not grow with the piece');
}
