import { isCurrency, minorUnits } from '@scantling/money';
import type { Settings } from '../operations/operation.ts';

const SLACK = 1e-9;

/** The share of one weight by largest remainder, sample by sample, as `allocate` has it in decimals. */
export function allocateColumn(out: Float64Array, inputs: readonly Float64Array[], settings: Settings): void {
  const [total, ...weights] = inputs;
  const { currency = '', share = '0' } = settings;
  const unit = 10 ** -(isCurrency(currency) ? minorUnits(currency) : 2);
  const own = Number(share);
  for (let at = 0; at < out.length; at += 1) {
    const whole = total?.[at] ?? 0;
    const each = weights.map((weight) => weight[at] ?? 0);
    const sum = each.reduce((all, weight) => all + weight, 0);
    const units = Math.round(Math.abs(whole) / unit);
    const exact = each.map((weight) => (units * weight) / sum);
    const floors = exact.map((value) => Math.floor(value + SLACK));
    const rests = exact.map((value, index) => value - (floors[index] ?? 0));
    const left = units - floors.reduce((all, value) => all + value, 0);
    const mine = rests[own] ?? 0;
    const before = rests.filter(
      (rest, index) => index !== own && (index < own ? rest >= mine - SLACK : rest > mine + SLACK),
    ).length;
    const isValid = sum > 0 && each.every((weight) => weight >= 0);
    out[at] = isValid ? Math.sign(whole) * unit * ((floors[own] ?? 0) + (before < left ? 1 : 0)) : Number.NaN;
  }
}
