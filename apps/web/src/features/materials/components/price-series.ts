import { decimal } from '@scantling/decimals';
import type { MaterialPrice } from '../api/list-material-prices.ts';

interface Kind {
  readonly key: string;
  readonly unit: MaterialPrice['line']['unit'];
  readonly currency: MaterialPrice['list']['currency'];
  readonly prices: MaterialPrice[];
}

/** Prices that can stand on one axis: of one unit and currency. */
export function kindsOf(prices: readonly MaterialPrice[]): readonly Kind[] {
  const kinds = new Map<string, Kind>();
  for (const price of prices) {
    const { unit } = price.line;
    const { currency } = price.list;
    const key = `${unit} ${currency}`;
    const kind = kinds.get(key) ?? { key, unit, currency, prices: [] };
    kind.prices.push(price);
    kinds.set(key, kind);
  }
  return [...kinds.values()];
}

interface Series {
  readonly id: string;
  readonly label: string;
  /** Day to which the last price holds; today while it is in force. */
  readonly until: string;
  readonly points: { readonly at: string; readonly value: string }[];
}

/**
 * One line of the chart per supplier, article and break; of two lists of a day the one entered last stands.
 * @param prices newest list first
 * @param today YYYY-MM-DD
 */
export function seriesOf(prices: readonly MaterialPrice[], today: string): readonly Series[] {
  const series = new Map<string, Series>();
  for (const { line, list, supplier, endedFrom } of prices) {
    const id = [supplier.id, line.itemId, line.breakFrom].join(' ');
    const from = decimal(line.breakFrom).isZero() ? '' : ` from ${line.breakFrom}`;
    const label = `${supplier.name}, ${line.code}${from}`;
    const [until = today] = [endedFrom, list.validTo, today].filter((day) => day !== null).sort();
    const one = series.get(id) ?? { id, label, until, points: [] };
    if (!one.points.some(({ at }) => at === list.validFrom)) {
      one.points.push({ at: list.validFrom, value: line.amount });
    }
    series.set(id, one);
  }
  return [...series.values()];
}
