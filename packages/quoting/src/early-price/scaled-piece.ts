import { CostingInputError, LeafReader } from '@scantling/costing';
import { type Figure, number, scale, sum } from '@scantling/figures';
import type { EarlyCost } from './early-cost.ts';
import {
  EARLY_PRICE_CLASSES,
  type EarlyPriceClass,
  type EarlyPriceInput,
  type PastPiece,
  type ScaleRule,
  type Scaling,
} from './early-price-input.ts';
import { Measures, scaledBy, unchanged } from './scale-factor.ts';

/** A past piece brought to what is asked for. */
export interface ScaledPiece extends EarlyCost {
  readonly id: string;
  readonly name: string;
  readonly past: Readonly<Record<EarlyPriceClass, Figure<'money'>>> & { readonly hours: Figure<'h'> };
  readonly factors: Readonly<Record<EarlyPriceClass, Figure<'ratio'>>>;
}

export const CLASS_WORDS: Readonly<Record<EarlyPriceClass, string>> = {
  materials: 'materials',
  boughtIn: 'hardware and bought-in',
  labour: 'labour',
  machines: 'machines',
  overhead: 'overhead',
  other: 'freight and contingency',
};

/** What is asked for, read once for all past pieces. */
export interface Asked {
  readonly input: EarlyPriceInput;
  readonly measures: Measures;
  readonly hours: Figure<'h'> | null;
  readonly scaling: Scaling;
  readonly exponents: Readonly<Record<EarlyPriceClass, Figure<'ratio'>>>;
  readonly adjustment: Figure<'ratio'>;
}

/** Scales each class of a past piece by its rule. @throws CostingInputError naming the field ("pieces.0.size.width") */
export function scaledPiece(piece: PastPiece, index: number, asked: Asked): ScaledPiece {
  const reader = new LeafReader({
    keyPrefix: `early-price/piece/${piece.id}`,
    currency: asked.input.currency,
    source: piece.source ?? { kind: 'entered', text: `past piece "${piece.name}"` },
    subject: piece.name,
    path: `pieces.${index}`,
  });
  const money = (field: EarlyPriceClass | 'ownerLabour', label: string) =>
    reader.read(field, piece[field], { label: `${label} then`, unit: 'money', from: 0 });
  const hoursThen = reader.read('hours', piece.hours, { label: 'hours then', unit: 'h', from: 0 });
  const measures = new Measures(piece.name, piece, reader);
  const labourFactor = () => hoursFactor(piece, hoursThen, measures, asked, reader);
  const each = <T>(make: (name: EarlyPriceClass) => T) =>
    Object.fromEntries(EARLY_PRICE_CLASSES.map((name) => [name, make(name)])) as Record<EarlyPriceClass, T>;
  const labour = labourFactor();
  const factors = each((name) => {
    if (name === 'labour') return labour;
    return factorOf(name, asked.scaling[name], labour, measures, asked, piece.name);
  });
  const past = each((name) => money(name, CLASS_WORDS[name]));
  const grown = <U extends 'money' | 'h'>(label: string, figure: Figure<U>, factor: Figure<'ratio'>) =>
    scale(`${piece.name}: ${label}, scaled`, figure, factor, asked.adjustment);
  const classes = each((name) => grown(CLASS_WORDS[name], past[name], factors[name]));
  const ownerHours = reader.read('ownerHours', piece.ownerHours, {
    label: "owner's hours then",
    unit: 'h',
    from: 0,
  });
  return {
    id: piece.id,
    name: piece.name,
    past: { ...past, hours: hoursThen },
    factors,
    classes,
    cost: sum(`${piece.name}: cost, scaled`, 'money', Object.values(classes)),
    hours: grown('hours', hoursThen, labour),
    ownerHours: grown("owner's hours", ownerHours, labour),
    ownerLabour: grown("owner's labour", money('ownerLabour', "owner's labour"), labour),
  };
}

function hoursFactor(
  piece: PastPiece,
  hoursThen: Figure<'h'>,
  measures: Measures,
  asked: Asked,
  reader: LeafReader,
): Figure<'ratio'> {
  const rule = asked.scaling.labour;
  const label = `${piece.name}: hours grow by`;
  if (rule.basis !== 'hours') return factorOf('labour', rule, number(1), measures, asked, piece.name);
  if (asked.hours === null)
    throw new CostingInputError(
      'asked.hours',
      'is missing',
      'enter the hours the piece will take, or let labour grow with the size',
    );
  if (hoursThen.value.isZero())
    throw new CostingInputError(
      reader.path('hours'),
      'cannot be 0',
      'enter the hours the past piece took, or let labour grow with the size',
    );
  return scaledBy(label, asked.hours, hoursThen, asked.exponents.labour);
}

function factorOf(
  name: EarlyPriceClass,
  { basis }: ScaleRule,
  hours: Figure<'ratio'>,
  measures: Measures,
  asked: Asked,
  pieceName: string,
): Figure<'ratio'> {
  const label = `${pieceName}: ${CLASS_WORDS[name]} grow by`;
  if (basis === 'none') return unchanged(label);
  const exponent = asked.exponents[name];
  if (basis === 'hours') return scaledBy(label, hours, number(1), exponent);
  const before = measures.of(basis);
  return scaledBy(label, asked.measures.of(basis), before, exponent);
}
