import { difference, type Figure, type Source, sum } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';
import { findingsOf } from './home-findings.ts';
import {
  HOMES,
  type Home,
  type HomedAmount,
  type HomeLine,
  type OneHome,
  type RateHome,
  type RecoveredByRates,
} from './homes.ts';

/**
 * Proves that each yearly amount of the shop has one home: the total of the amounts equals what machine
 * rates, labour rates and the pools (net of what rates recover) bring back in a year as planned. Names
 * amounts with two homes, amounts with none, and recoveries nobody pays for.
 * @throws CostingInputError naming the field ("amounts.3.yearlyAmount")
 */
export function oneHome(
  amounts: readonly HomedAmount[],
  recovered: readonly RecoveredByRates[],
  context: CostingContext,
): OneHome {
  const lines = amounts.map((amount, index) => lineOf(amount, index, amounts, recovered, context));
  const all = (label: string, figures: readonly Figure<'money/year'>[]) =>
    sum(label, 'money/year', figures, context.currency);
  const pool = (home: Home) => lines.filter((line) => line.home === home).map((line) => line.inPool);
  const homes = {
    'machine-rate': all(
      'Recovered by machine-hour rates',
      lines.map((line) => line.byMachineRates),
    ),
    'labour-rate': all(
      'Recovered by labour rates',
      lines.map((line) => line.byLabourRates),
    ),
    'workshop-pool': all('Workshop pool, net', pool('workshop-pool')),
    'administration-pool': all('Administration pool, net', pool('administration-pool')),
  };
  const total = all(
    'All yearly amounts',
    lines.map((line) => line.amount),
  );
  const rest = difference('Yearly amounts less all homes', total, all('All homes', Object.values(homes)));
  const findings = findingsOf(amounts, lines, recovered);
  return { total, lines, homes, rest, holds: findings.length === 0, findings };
}

function lineOf(
  amount: HomedAmount,
  index: number,
  amounts: readonly HomedAmount[],
  recovered: readonly RecoveredByRates[],
  context: CostingContext,
): HomeLine {
  const yearly = readAmount(amount, index, amounts, context);
  // A recovery named by two amounts is taken off the first only: taken off twice, it would vanish.
  const isFirst = amounts.findIndex((other) => other.recoveredAs === amount.recoveredAs) === index;
  const by = (rate: RateHome) =>
    sum(
      `${amount.name}: recovered by ${rate === 'machine-rate' ? 'machine-hour' : 'labour'} rates`,
      'money/year',
      recovered
        .filter((one) => isFirst && one.recoveredAs === amount.recoveredAs && one.by === rate)
        .map((one) => one.perYear),
      context.currency,
    );
  const byMachineRates = by('machine-rate');
  const byLabourRates = by('labour-rate');
  const left = difference(
    `${amount.name}: left after rates`,
    yearly,
    sum('recovered by rates', 'money/year', [byMachineRates, byLabourRates]),
  );
  const none = sum(`${amount.name}: nothing`, 'money/year', [], context.currency);
  const isPooled = amount.home === 'workshop-pool' || amount.home === 'administration-pool';
  const comesBack = isPooled && left.value.gte(0);
  return {
    id: amount.id,
    name: amount.name,
    home: amount.home,
    amount: yearly,
    byMachineRates,
    byLabourRates,
    inPool: comesBack ? left : none,
    nowhere: comesBack ? none : left,
  };
}

function readAmount(
  amount: HomedAmount,
  index: number,
  amounts: readonly HomedAmount[],
  context: CostingContext,
): Figure<'money/year'> {
  const path = `amounts.${index}`;
  if (!HOMES.includes(amount.home))
    throw new CostingInputError(`${path}.home`, `cannot be "${amount.home}"`, `choose ${HOMES.join(', ')}`);
  if (amount.worked !== undefined) return amount.worked;
  const record: Source = {
    kind: 'shop-rate',
    text: `yearly amount "${amount.name}"`,
    record: `overhead:${amount.id}`,
  };
  // An id that is there twice is a finding, so both must be able to stand in one answer.
  const copies = amounts.slice(0, index).filter((other) => other.id === amount.id).length;
  const id = copies === 0 ? amount.id : `${amount.id}~${copies + 1}`;
  const reader = new LeafReader({
    keyPrefix: `${context.keyPrefix ?? 'overhead'}/amount/${id}`,
    currency: context.currency,
    source: context.source ?? record,
    subject: amount.name,
    path,
  });
  const yearly = reader.read('yearlyAmount', amount.yearlyAmount, {
    label: 'a year',
    unit: 'money/year',
    from: 0,
  });
  return amount.less === undefined
    ? yearly
    : difference(`${amount.name}: a year, without ${amount.less.label}`, yearly, amount.less);
}
