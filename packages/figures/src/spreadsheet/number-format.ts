import { type Currency, minorUnits } from '@scantling/money';
import { isMoneyUnit, placesOf, type Unit, unitWords } from '@scantling/units';

/** What is read as a percentage. Numbers of pieces, months and factors have no unit either, and are not. */
const SHARES =
  /\b(?:share|part of|yield|margin|markup|discount|contingency|burden|rate a year|learning rate|load|efficiency|tax on purchases)\b/i;

/** Whether a pure number is read as a percentage, by what it is called. */
export function isShare(unit: Unit, label: string): boolean {
  return unit === 'ratio' && SHARES.test(label);
}

/** Format of an amount of money: its currency's places. The codes are the same in every language of a spreadsheet. */
export function moneyFormat(currency: Currency | null, morePlaces = 0): string {
  return placesFormat((currency === null ? 2 : minorUnits(currency)) + morePlaces);
}

export const PERCENT_FORMAT = '0.00%';

/** Exactly so many decimal places, thousands apart. */
export function placesFormat(places: number): string {
  return places === 0 ? '#,##0' : `#,##0.${'0'.repeat(places)}`;
}

/** The format of a figure by its unit (ECMA-376 part 1, 18.8.31): rates of money keep two places more than money. */
export function numberFormat(unit: Unit, currency: Currency | null, label: string): string {
  if (isMoneyUnit(unit)) return moneyFormat(currency, unit === 'money' ? 0 : 2);
  if (unit === 'ratio') return isShare(unit, label) ? PERCENT_FORMAT : 'General';
  return placesFormat(placesOf(unit));
}

/** The unit in words beside a cell: "EUR per h", "mm", "%"; nothing for counts. */
export function unitLabel(unit: Unit, currency: Currency | null, label: string): string {
  if (isShare(unit, label)) return '%';
  return [isMoneyUnit(unit) ? currency : null, unitWords(unit)].filter((word) => word).join(' ');
}
