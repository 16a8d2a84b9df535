import type { DecimalLike } from '@scantling/decimals';
import { constant, derive, type Figure } from '@scantling/figures';
import type { LeafReader } from '../leaf-reader.ts';
import { coverageByFilm, type FinishSystem, type SpreadingUnit } from './coverage.ts';

/** What a film takes, coat by coat. Shares are fractions. */
export interface Film {
  /** Solids by volume as applied, after thinning. */
  readonly volumeSolids: DecimalLike;
  /** The part that stays on the work: 1 for brush and wipe, much less for a spray gun. */
  readonly transferEfficiency: DecimalLike;
  /** Dry film of one coat, in mil or micrometres. */
  readonly dryFilmPerCoat: DecimalLike;
  /**
   * US only: 231/144 x 1000 = 1604.1667 (the default), or the 1604 that printed tables round it to, to
   * reproduce one.
   */
  readonly usConstant?: 'exact' | 'as-printed';
}

export interface FilmFigures {
  /** Area that one gallon or litre covers at this film. */
  readonly spreadingRate: Figure<SpreadingUnit>;
  /** Dry film / volume solids: what a wet-film comb reads, in mil or micrometres. */
  readonly wetFilm: Figure<'mil' | 'um'>;
}

const CUBIC_INCHES_IN_A_GALLON = constant('cubic inches in a US gallon', 'ratio', 231);
const SQUARE_INCHES_IN_A_SQUARE_FOOT = constant('square inches in a square foot', 'ratio', 144);
const A_THOUSAND = constant('mil in an inch, or um in a mm', 'ratio', 1000);
const AS_PRINTED = constant('ft2 x mil of solids in a gallon, rounded as tables print it', 'ft2/gal', 1604);
export const METRIC_SOLIDS = constant('m2 x um of solids in a litre', 'm2/l', 1000);

/**
 * The film's inputs read and checked, with the area that a unit covers at it.
 * @throws CostingInputError naming the field
 */
export function filmFigures(film: Film, system: FinishSystem, reader: LeafReader): FilmFigures {
  const volumeSolids = reader.read('volumeSolids', film.volumeSolids, {
    label: 'solids by volume, as applied',
    unit: 'ratio',
    above: 0,
    to: 1,
  });
  const transferEfficiency = readTransferEfficiency(film.transferEfficiency, reader);
  const filmUnit: 'mil' | 'um' = system === 'us' ? 'mil' : 'um';
  const dryFilm = reader.read('dryFilmPerCoat', film.dryFilmPerCoat, {
    label: 'dry film of a coat',
    unit: filmUnit,
    above: 0,
  });
  const solids = system === 'us' ? usConstant(film.usConstant ?? 'exact') : METRIC_SOLIDS;
  return {
    spreadingRate: coverageByFilm('area that one unit of finish covers in a coat', {
      solids,
      volumeSolids,
      transferEfficiency,
      dryFilm,
    }),
    wetFilm: derive('wet film of a coat', filmUnit, 'quotient', [dryFilm, volumeSolids]),
  };
}

export function readTransferEfficiency(value: DecimalLike | undefined, reader: LeafReader): Figure<'ratio'> {
  return reader.read('transferEfficiency', value, {
    label: 'transfer efficiency',
    unit: 'ratio',
    above: 0,
    to: 1,
  });
}

function usConstant(which: 'exact' | 'as-printed'): Figure<SpreadingUnit> {
  return which === 'as-printed'
    ? AS_PRINTED
    : derive('ft2 x mil of solids in a gallon', 'ft2/gal', 'quotient', [
        derive('231 x 1000', 'ratio', 'product', [CUBIC_INCHES_IN_A_GALLON, A_THOUSAND]),
        SQUARE_INCHES_IN_A_SQUARE_FOOT,
      ]);
}
