import { divide, type Figure, number, scale, sum } from '@scantling/figures';
import type { Unit } from '@scantling/units';
import { EARLY_PRICE_CLASSES, type EarlyPriceClass } from './early-price-input.ts';

/** Cost and hours at one estimate, in the shape a price is made from. */
export interface EarlyCost {
  readonly classes: Readonly<Record<EarlyPriceClass, Figure<'money'>>>;
  readonly cost: Figure<'money'>;
  readonly hours: Figure<'h'>;
  readonly ownerHours: Figure<'h'>;
  readonly ownerLabour: Figure<'money'>;
}

function mapCost(cost: EarlyCost, change: <U extends Unit>(figure: Figure<U>) => Figure<U>): EarlyCost {
  const classes = Object.fromEntries(
    EARLY_PRICE_CLASSES.map((name) => [name, change(cost.classes[name])]),
  ) as EarlyCost['classes'];
  return {
    classes,
    cost: sum('cost', 'money', Object.values(classes)),
    hours: change(cost.hours),
    ownerHours: change(cost.ownerHours),
    ownerLabour: change(cost.ownerLabour),
  };
}

/** All of a cost, hours too, by one factor. */
export function scaledAll(cost: EarlyCost, factor: Figure<'ratio'>): EarlyCost {
  return mapCost(cost, (figure) => scale(`${figure.label} × ${factor.label}`, figure, factor));
}

/** The mean of several costs, class by class. */
export function meanOf(costs: readonly EarlyCost[]): EarlyCost {
  const count = number(costs.length, 'past pieces');
  const mean = <U extends Unit>(what: string, figures: readonly Figure<U>[], unit: U) =>
    divide(`${what}, mean of the past pieces`, sum(`${what} of all past pieces`, unit, figures), count);
  const classes = Object.fromEntries(
    EARLY_PRICE_CLASSES.map((name) => [
      name,
      mean(
        name,
        costs.map((cost) => cost.classes[name]),
        'money',
      ),
    ]),
  ) as EarlyCost['classes'];
  const of = <U extends Unit>(what: string, pick: (cost: EarlyCost) => Figure<U>, unit: U) =>
    mean(what, costs.map(pick), unit);
  return {
    classes,
    cost: sum('cost, mean of the past pieces', 'money', Object.values(classes)),
    hours: of('hours', (cost) => cost.hours, 'h'),
    ownerHours: of("owner's hours", (cost) => cost.ownerHours, 'h'),
    ownerLabour: of("owner's labour", (cost) => cost.ownerLabour, 'money'),
  };
}
