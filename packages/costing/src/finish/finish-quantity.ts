import type { DecimalLike } from '@scantling/decimals';
import { constant, derive, entered, type Figure, scale, sum } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';
import { coverageInUse, type FinishSystem, finishApplied, type SpreadingUnit } from './coverage.ts';
import { type Caution, OIL_SOAKED_RAGS } from './finish-caution.ts';
import { type Film, filmFigures, readTransferEfficiency } from './spreading-rate.ts';

/** The label's or the maker's own coverage, in ft2 per gallon or m2 per litre and coat. */
export interface Coverage {
  readonly areaPerUnit: DecimalLike;
  /** Worked out from solids with nothing lost, so that transfer efficiency must still divide it. */
  readonly isTheoretical: boolean;
  /** Needed exactly when the coverage is theoretical. */
  readonly transferEfficiency?: DecimalLike;
}

export interface FinishApplication {
  readonly id: string;
  readonly name: string;
  readonly system: FinishSystem;
  /** ft2 or m2 of the faces that the finish schedule names. */
  readonly area: DecimalLike;
  readonly coats: DecimalLike;
  /** Wiped oils build no film to measure: they go by coverage only. */
  readonly isWipedOil: boolean;
  readonly by: ({ readonly kind: 'film' } & Film) | ({ readonly kind: 'coverage' } & Coverage);
  /** Finish that is mixed (with hardener, thinner, colour): each batch leaves a rest that is lost. */
  readonly mixing?: { readonly batches: DecimalLike; readonly restPerBatch: DecimalLike };
}

export interface FinishQuantity {
  readonly id: string;
  /** Area of one coat that one gallon or litre covers, transfer efficiency counted. */
  readonly spreadingRate: Figure<SpreadingUnit>;
  /** Null where the finish goes by coverage. */
  readonly wetFilm: Figure<'mil' | 'um'> | null;
  /** What goes on the work and beside it. */
  readonly applied: Figure<'gal' | 'l'>;
  /** Lost with mixed batches; null where nothing is mixed. */
  readonly rest: Figure<'gal' | 'l'> | null;
  /** Applied and lost: what is needed. */
  readonly quantity: Figure<'gal' | 'l'>;
  readonly litres: Figure<'l'>;
  readonly caution: Caution | null;
}

const LITRES_IN_A_GALLON = constant('litres in a US gallon', 'l/gal', '3.785411784');

/**
 * How much finish a job takes: area x coats / area per unit, and the rest that mixed batches lose. A label
 * coverage is divided by transfer efficiency only when it is theoretical.
 * @throws CostingInputError naming the field; a wiped oil given by film is one
 */
export function finishQuantity(finish: FinishApplication, context: CostingContext): FinishQuantity {
  const reader = new LeafReader({
    keyPrefix: `${context.keyPrefix ?? 'finish'}/${finish.id}`,
    currency: context.currency,
    source: context.source ?? entered(),
    subject: finish.name,
  });
  if (finish.isWipedOil && finish.by.kind === 'film')
    throw new CostingInputError(
      'by',
      'is a film, which a wiped oil does not build',
      'give its coverage instead',
    );
  const unit: 'gal' | 'l' = finish.system === 'us' ? 'gal' : 'l';
  const film = finish.by.kind === 'film' ? filmFigures(finish.by, finish.system, reader) : null;
  const spreadingRate = film?.spreadingRate ?? coverageRate(finish, reader);
  const area = reader.read('area', finish.area, {
    label: 'area to be finished',
    unit: finish.system === 'us' ? 'ft2' : 'm2',
    from: 0,
  });
  const coats = reader.read('coats', finish.coats, { label: 'coats', unit: 'ratio', above: 0, whole: true });
  const label = (what: string) => `${finish.name}: ${what}`;
  const applied = finishApplied(finish.name, unit, { area, coats, coverage: spreadingRate });
  const rest = restOf(finish, unit, reader);
  const quantity = rest === null ? applied : sum<'gal' | 'l'>(label('needed'), unit, [applied, rest]);
  return {
    id: finish.id,
    spreadingRate,
    wetFilm: film?.wetFilm ?? null,
    applied,
    rest,
    quantity,
    litres:
      finish.system === 'us'
        ? derive(label('needed, in litres'), 'l', 'product', [quantity, LITRES_IN_A_GALLON])
        : derive(label('needed, in litres'), 'l', 'same', [quantity]),
    caution: finish.isWipedOil ? OIL_SOAKED_RAGS : null,
  };
}

function coverageRate({ by, system }: FinishApplication, reader: LeafReader): Figure<SpreadingUnit> {
  if (by.kind !== 'coverage')
    throw new CostingInputError('by', `cannot be "${by.kind}"`, 'choose film or coverage');
  const printed = reader.read<SpreadingUnit>('areaPerUnit', by.areaPerUnit, {
    label: by.isTheoretical ? 'theoretical coverage' : 'coverage in use',
    unit: system === 'us' ? 'ft2/gal' : 'm2/l',
    above: 0,
  });
  if (!by.isTheoretical && by.transferEfficiency !== undefined)
    throw new CostingInputError(
      'transferEfficiency',
      'is given beside a coverage in use, which counts it already',
      'leave it out, or say that the coverage is theoretical',
    );
  return coverageInUse('coverage in use', printed, {
    isTheoretical: by.isTheoretical,
    transferEfficiency: () => readTransferEfficiency(by.transferEfficiency, reader),
  });
}

function restOf(
  finish: FinishApplication,
  unit: 'gal' | 'l',
  reader: LeafReader,
): Figure<'gal' | 'l'> | null {
  if (finish.mixing === undefined) return null;
  const batches = reader.read('mixing.batches', finish.mixing.batches, {
    label: 'batches mixed',
    unit: 'ratio',
    above: 0,
    whole: true,
  });
  const rest = reader.read('mixing.restPerBatch', finish.mixing.restPerBatch, {
    label: 'rest lost with a batch',
    unit,
    from: 0,
  });
  return scale(`${finish.name}: rests of mixed batches`, rest, batches);
}
