import type { DecimalLike } from '@scantling/decimals';
import { derive, difference, type Figure, type Source, sum } from '@scantling/figures';
import type { Unit } from '@scantling/units';
import { CostingInputError } from '../input-error.ts';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';
import {
  HOURLY_BASES,
  type HourlyBase,
  OVERHEAD_BASE_WORDS,
  type OverheadActual,
  type OverheadBase,
  type OverheadPool,
  type OverheadRate,
  type OverheadRateUnit,
} from './overhead-pool.ts';

/**
 * The recovery rate of an overhead pool, at planned and at actual base. Leaves are `overhead/<id>/...`.
 * @throws CostingInputError naming the field; a base of 0 is one
 */
export function overheadRate<Base extends OverheadBase>(
  pool: OverheadPool<Base>,
  context: CostingContext,
): OverheadRate<Base> {
  const reader = poolReader(pool, context);
  const net = netAmount(pool, reader, context);
  const planned = baseOf(pool, 'plannedBase', pool.plannedBase, reader, 'planned for the year');
  const rate = rateOver(`${pool.name}, as planned: ${rateWords(pool.base)}`, pool.base, net, planned);
  return {
    poolId: pool.id,
    name: pool.name,
    kind: pool.kind,
    base: pool.base,
    net,
    rate,
    actual: actualOf(pool, net, rate, reader),
  };
}

/**
 * What a job is charged: the rate over its hours, or its share of the job's labour or prime cost.
 * @param at the rate as planned, or of the year as it went where that is known
 */
export function overheadCharge(
  label: string,
  rate: OverheadRate,
  quantity: Figure<'h'> | Figure<'money'>,
  at: 'planned' | 'actual' = 'planned',
): Figure<'money'> {
  const wanted: Unit = isHourly(rate.base) ? 'h' : 'money';
  if (quantity.unit !== wanted)
    throw new CostingInputError(
      'quantity',
      `is in ${quantity.unit}`,
      `give ${wanted} for a base of ${OVERHEAD_BASE_WORDS[rate.base]}`,
    );
  const used = at === 'actual' ? (rate.actual?.rate ?? rate.rate) : rate.rate;
  return derive(label, 'money', 'product', [used, quantity]);
}

function rateWords(base: OverheadBase): string {
  return isHourly(base)
    ? `for each of the ${OVERHEAD_BASE_WORDS[base]}`
    : `share of ${OVERHEAD_BASE_WORDS[base]}`;
}

function isHourly(base: OverheadBase): base is HourlyBase {
  return HOURLY_BASES.some((one) => one === base);
}

function poolReader(pool: OverheadPool, context: CostingContext): LeafReader {
  const record: Source = {
    kind: 'shop-rate',
    text: `overhead pool "${pool.name}"`,
    record: `overhead:${pool.id}`,
  };
  return new LeafReader({
    keyPrefix: `${context.keyPrefix ?? 'overhead'}/${pool.id}`,
    currency: context.currency,
    source: context.source ?? record,
    subject: pool.name,
  });
}

function netAmount(pool: OverheadPool, reader: LeafReader, context: CostingContext): Figure<'money'> {
  const amounts = pool.amounts.map((amount, index) =>
    reader
      .inside(`amounts.${index}`, `amount/${amount.id}`, amount.name)
      .read('yearlyAmount', amount.yearlyAmount, {
        label: 'a year',
        unit: 'money',
        from: 0,
        source: context.source ?? {
          kind: 'shop-rate',
          text: `yearly amount "${amount.name}"`,
          record: `overhead:${amount.id}`,
        },
      }),
  );
  const gross = sum(`${pool.name}: amounts of the year`, 'money', amounts, context.currency);
  if (pool.recoveredByRates === undefined) return gross;
  const recovered = reader.read('recoveredByRates', pool.recoveredByRates, {
    label: 'recovered by machine and labour rates',
    unit: 'money',
    from: 0,
    source: context.source ?? {
      kind: 'shop-rate',
      text: 'the proof that each yearly amount has one home',
      record: `proof:${pool.id}`,
    },
  });
  const net = difference(`${pool.name}: net of what rates recover`, gross, recovered);
  if (net.value.lt(0))
    throw new CostingInputError(
      'recoveredByRates',
      `is ${recovered.value} of amounts of ${gross.value}`,
      'correct what rates recover, or the yearly amounts: a pool cannot recover less than nothing',
    );
  return net;
}

function baseOf(
  pool: OverheadPool,
  field: string,
  value: DecimalLike,
  reader: LeafReader,
  when: string,
): Figure<'h'> | Figure<'money'> {
  const label = `${OVERHEAD_BASE_WORDS[pool.base]} ${when}`;
  return isHourly(pool.base)
    ? reader.read(field, value, { label, unit: 'h', above: 0 })
    : reader.read(field, value, { label, unit: 'money', above: 0 });
}

function rateOver<Base extends OverheadBase>(
  label: string,
  base: Base,
  amount: Figure<'money'>,
  over: Figure<'h'> | Figure<'money'>,
): Figure<OverheadRateUnit<Base>> {
  // The unit follows from the base at run time as OverheadRateUnit says it does in types.
  const unit = (isHourly(base) ? 'money/h' : 'ratio') as OverheadRateUnit<Base>;
  return derive(label, unit, 'quotient', [amount, over]);
}

function actualOf<Base extends OverheadBase>(
  pool: OverheadPool<Base>,
  net: Figure<'money'>,
  rate: Figure<OverheadRateUnit<Base>>,
  reader: LeafReader,
): OverheadActual<Base> | null {
  if (pool.actual === undefined) return null;
  const label = (what: string) => `${pool.name}: ${what}`;
  const amount = reader.read('actual.amount', pool.actual.amount, {
    label: 'spent in the year, net of what rates recovered',
    unit: 'money',
    from: 0,
  });
  const base = baseOf(pool, 'actual.base', pool.actual.base, reader, 'there were');
  const recovered = derive(label('recovered'), 'money', 'product', [rate, base]);
  return {
    rate: rateOver(`${pool.name}, as it went: ${rateWords(pool.base)}`, pool.base, amount, base),
    recovered,
    underRecovered: difference(label('under-recovered'), amount, recovered),
    spending: difference(label('spent above plan'), amount, net),
    volume: difference(label('not recovered for want of base'), net, recovered),
  };
}
