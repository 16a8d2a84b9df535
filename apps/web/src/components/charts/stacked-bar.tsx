import { decimal } from '@scantling/decimals';
import { useId } from 'react';
import { Bar, BarChart, ResponsiveContainer, Tooltip, XAxis, YAxis } from 'recharts';
import { ChartFrame } from './chart-frame.tsx';
import { Hatchings, hatchFill, SeriesKey, seriesColour } from './hatching.tsx';

export interface StackedBarProps {
  readonly label: string;
  /** The parts of each bar, in order from the left. */
  readonly series: readonly { readonly id: string; readonly label: string }[];
  /** One bar each; values are decimal text by series id. */
  readonly bars: readonly { readonly label: string; readonly values: Readonly<Record<string, string>> }[];
  /** Writes a value with its unit ("$245.00"). */
  readonly write: (value: string) => string;
  /** Head of the table's first column. */
  readonly barHead: string;
}

/** Lying bars made of parts: what a whole is made of, at one or several sizes. */
export function StackedBar({ label, series, bars, write, barHead }: StackedBarProps) {
  const prefix = useId();
  // Floats only give the length of the bars; every number that is read comes from the decimal text.
  const data = bars.map((bar) => ({
    label: bar.label,
    ...Object.fromEntries(series.map(({ id }) => [id, decimal(bar.values[id] ?? '0').toNumber()])),
  }));
  const table = {
    heads: [barHead, ...series.map((one) => one.label)],
    rows: bars.map((bar) => [bar.label, ...series.map(({ id }) => write(bar.values[id] ?? '0'))]),
  };
  return (
    <ChartFrame label={label} table={table}>
      <SeriesKey prefix={prefix} labels={series.map((one) => one.label)} />
      <ResponsiveContainer width="100%" height={bars.length * 44 + 44}>
        <BarChart
          data={data}
          layout="vertical"
          margin={{ top: 4, right: 16, bottom: 0, left: 0 }}
          barCategoryGap={10}
        >
          <Hatchings prefix={prefix} />
          <XAxis type="number" tickFormatter={(value: number) => write(String(value))} />
          <YAxis type="category" dataKey="label" width={88} tickLine={false} />
          <Tooltip
            cursor={{ fill: 'var(--tint)' }}
            isAnimationActive={false}
            content={({ active, label: bar }) => {
              const found = active ? bars.find((one) => one.label === bar) : undefined;
              return found ? (
                <div className="chart-tip">
                  <strong>{found.label}</strong>
                  <dl>
                    {series.map(({ id, label: name }) => (
                      <div key={id}>
                        <dt>{name}</dt>
                        <dd>{write(found.values[id] ?? '0')}</dd>
                      </div>
                    ))}
                  </dl>
                </div>
              ) : null;
            }}
          />
          {series.map(({ id, label: name }, index) => (
            <Bar
              key={id}
              dataKey={id}
              name={name}
              stackId="whole"
              fill={hatchFill(prefix, index)}
              stroke={seriesColour(index)}
              isAnimationActive={false}
            />
          ))}
        </BarChart>
      </ResponsiveContainer>
    </ChartFrame>
  );
}
