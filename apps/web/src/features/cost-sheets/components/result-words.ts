import type { SheetResult, SheetResultName } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import type { FigureNode } from '@scantling/figures';
import { formatAmount, formatPercent } from '../../../lib/format.ts';

/** What each result is called, and whether it is a share. */
export const RESULT_LABELS: Readonly<Record<SheetResultName, string>> = {
  netPrice: 'Net price',
  cost: 'Cost of production',
  margin: 'Margin',
  hourlyEarnings: 'Your hour brings',
  piecePrice: 'Price per piece',
  pieceCost: 'Cost per piece',
  workHours: 'Hours of work',
  ownerHours: 'Your hours',
  floorPrice: 'Floor price',
};

const PLACES: Partial<Record<SheetResultName, number>> = { workHours: 2, ownerHours: 2, hourlyEarnings: 2 };

type Unit = Pick<FigureNode, 'unit' | 'currency'>;

/** A result as it is read. */
export function resultWords(name: SheetResultName, value: string, unit: Unit, locale: string): string {
  if (name === 'margin') return formatPercent(value, 1, { locale, places: 1 });
  const places = PLACES[name];
  return formatAmount({ ...unit, value }, { locale, ...(places === undefined ? {} : { places }) }).text;
}

/** Decimal places at which a result is shown, where its unit does not say. */
export function resultPlaces(name: SheetResultName): number | undefined {
  return PLACES[name];
}

/** How far a result moved: "+$12.00 (+1.4 %)", "−0.3 points"; "as it stands" where it did not. */
export function movedWords(
  { name, difference, share }: Pick<SheetResult, 'name' | 'difference' | 'share'>,
  unit: Unit,
  locale: string,
): string {
  const away = decimal(difference);
  if (away.isZero()) return 'as it stands';
  const sign = away.isNegative() ? '−' : '+';
  const size = away.abs().toString();
  if (name === 'margin') {
    const points = formatAmount(
      { value: decimal(size).times(100), unit: 'ratio', currency: null },
      { locale, places: 1 },
    );
    return `${sign}${points.number} points`;
  }
  const amount = `${sign}${resultWords(name, size, unit, locale)}`;
  if (share === null) return amount;
  return `${amount} (${sign}${formatPercent(decimal(share).abs().toString(), 1, { locale, places: 1 })})`;
}
