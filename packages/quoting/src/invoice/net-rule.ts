import { decimal } from '@scantling/decimals';
import { difference, type Figure, roundMoney, scale } from '@scantling/figures';
import type { Currency } from '@scantling/money';
import { rateOf, readTaxRows, type TaxedAmount, type TaxRow } from './taxed-amount.ts';

/** A tax set beside what BR-CO-17 of EN 16931 gives: net x rate, rounded to the minor unit. */
export interface NetRuleCheck {
  readonly byNetRule: Figure<'money'>;
  /** The tax less what the rule gives; 0 where it holds. */
  readonly differenceFromNetRule: Figure<'money'>;
}

/**
 * Sets the tax of an amount beside the net rule. They may differ by minor units where the amount with tax was agreed
 * first (net and tax are then both rounded), or where the amount is what others left of a whole: each of them and the
 * whole were rounded on their own. The published checks of EN 16931 let a category be less than 1 off (BR-CO-17, BR-S-09
 * in the Schematron of CEN/TC 434).
 */
export function checkNetRule(row: Pick<TaxedAmount, 'key' | 'tax' | 'net' | 'taxAmount'>): NetRuleCheck {
  const { name } = row.tax;
  const byNetRule = roundMoney(
    `${name} by the net rule`,
    scale(`${name}: without tax x rate`, row.net, rateOf(row)),
  );
  const differenceFromNetRule = difference(`${name}: difference from the net rule`, row.taxAmount, byNetRule);
  return { byNetRule, differenceFromNetRule };
}

/** Rows of a paper whose tax is not what the net rule gives, with by how much. */
export function offNetRule(rows: readonly TaxRow[], currency: Currency): { row: TaxRow; by: string }[] {
  const read = readTaxRows(rows, { key: 'stated', text: 'stated', currency });
  return rows.flatMap((row, at) => {
    const figures = read[at];
    const by = figures && checkNetRule(figures).differenceFromNetRule.value;
    return by === undefined || by.isZero() ? [] : [{ row, by: decimal(by).toString() }];
  });
}
