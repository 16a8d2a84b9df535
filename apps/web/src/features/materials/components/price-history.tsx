import { LineChart } from '../../../components/charts/line-chart.tsx';
import { formatMoney } from '../../../lib/format.ts';
import type { MaterialPrice } from '../api/list-material-prices.ts';
import { priceUnitWords } from './material-words.ts';
import { kindsOf, seriesOf } from './price-series.ts';

/** How prices of a material went: one chart per unit and currency, as steps from list to list. */
export function PriceHistory({
  prices,
  today,
}: {
  readonly prices: readonly MaterialPrice[];
  readonly today: string;
}) {
  return kindsOf(prices).map(({ key, unit, currency, prices: these }) => (
    <LineChart
      key={key}
      label={`Price per ${priceUnitWords(unit)} in ${currency}, as listed`}
      series={seriesOf(these, today)}
      axis="date"
      axisLabel="List of"
      write={(value) => formatMoney(value, currency, { isFull: true })}
      isStepped
    />
  ));
}
