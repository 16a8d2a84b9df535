import {
  type LabourGrade,
  labourRate,
  machineHourRate,
  type RecoveredByRates,
  recoveredByMachines,
  type ShopCosts,
  type Tool,
} from '@scantling/costing';
import { derive, input, sum } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import type { PaidHours } from './labour-grades.ts';

export interface RatesOfTheShop {
  readonly currency: Currency;
  readonly averageInvestment: 'forestry' | 'simple';
  readonly shop: ShopCosts;
  /** Tools in use. */
  readonly tools: readonly Tool[];
  readonly grades: readonly LabourGrade[];
  readonly paidHours: readonly PaidHours[];
}

/**
 * What rates bring back in a year at the hours planned: machine-hour rates on the replacement basis by kind of
 * cost, labour rates as "pay" (paid hours with burden, since the productive hours carry all of them).
 * @throws CostingInputError
 */
export function recoveredByRates(given: RatesOfTheShop): RecoveredByRates[] {
  const context = { currency: given.currency };
  const options = { context, shop: given.shop, averageInvestment: given.averageInvestment };
  const machines = recoveredByMachines(
    given.tools.map((tool) => machineHourRate(tool, 'replacement', options)),
  ).map(({ kind, perYear }): RecoveredByRates => ({ recoveredAs: kind, by: 'machine-rate', perYear }));
  if (given.paidHours.length === 0) return machines;
  const rates = new Map(given.grades.map((grade) => [grade.id, labourRate(grade, context)]));
  const pay = given.paidHours.flatMap((paid) => {
    const rate = rates.get(paid.gradeId);
    if (rate === undefined) return [];
    const hours = input({
      key: `person/${paid.personId}/paid-hours-per-year`,
      label: `${paid.name}: paid hours a year`,
      unit: 'h/year',
      value: paid.hoursPerYear,
      source: { kind: 'shop-rate', text: `person "${paid.name}"`, record: `person:${paid.personId}` },
    });
    return [derive(`${paid.name}: pay and burden a year`, 'money/year', 'product', [rate.paidHour, hours])];
  });
  const label = 'Labour rates recover in a year: pay and burden';
  const perYear = sum(label, 'money/year', pay, given.currency);
  return [...machines, { recoveredAs: 'pay', by: 'labour-rate', perYear }];
}
