import { derive, type Figure, scale } from '@scantling/figures';

/** US: ft2, mil and US gallons. Metric: m2, micrometres and litres. */
export type FinishSystem = 'us' | 'metric';
export type SpreadingUnit = 'ft2/gal' | 'm2/l';

/** What a film rests on, as figures. */
export interface FilmInputs {
  /** Area that one gallon or litre of solids covers at one mil or micrometre. */
  readonly solids: Figure<SpreadingUnit>;
  readonly volumeSolids: Figure<'ratio'>;
  readonly transferEfficiency: Figure<'ratio'>;
  readonly dryFilm: Figure<'mil' | 'um'>;
}

/**
 * Area that one gallon or litre covers in a coat: 1604.1667 x volume solids x transfer efficiency / dry mil, or
 * 1000 x volume solids x transfer efficiency / um (R. Joseph, "Calculating Paint Coverage", paintcenter.org, 2003).
 */
export function coverageByFilm(label: string, film: FilmInputs): Figure<SpreadingUnit> {
  const covered = derive('area at one unit of dry film', film.solids.unit, 'product', [
    film.solids,
    film.volumeSolids,
    film.transferEfficiency,
  ]);
  return derive(label, film.solids.unit, 'quotient', [covered, film.dryFilm]);
}

/** A label's coverage as it is in use: times transfer efficiency where the label counts no loss, else as printed. */
export function coverageInUse<U extends SpreadingUnit>(
  label: string,
  printed: Figure<U>,
  lost: { readonly isTheoretical: boolean; readonly transferEfficiency: () => Figure<'ratio'> },
): Figure<U> {
  return lost.isTheoretical ? scale(label, printed, lost.transferEfficiency()) : printed;
}

/** What goes on the work and beside it: area x coats / area that one unit covers in a coat. */
export function finishApplied<U extends 'gal' | 'l'>(
  name: string,
  unit: U,
  job: {
    readonly area: Figure<'ft2' | 'm2'>;
    readonly coats: Figure<'ratio'>;
    readonly coverage: Figure<SpreadingUnit>;
  },
): Figure<U> {
  return derive(`${name}: applied`, unit, 'quotient', [
    scale(`${name}: area of all coats`, job.area, job.coats),
    job.coverage,
  ]);
}
