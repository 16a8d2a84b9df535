import { decimal } from '@scantling/decimals';
import {
  CartesianGrid,
  LineChart as Chart,
  Line,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import { ChartFrame } from './chart-frame.tsx';
import { seriesColour } from './hatching.tsx';

export interface LinePoint {
  /** A date as YYYY-MM-DD, or a number as decimal text, as `axis` says. */
  readonly at: string;
  /** Decimal text. */
  readonly value: string;
}

export interface LineChartProps {
  readonly label: string;
  readonly series: readonly {
    readonly id: string;
    readonly label: string;
    readonly points: readonly LinePoint[];
    /** The last value holds until there: the line goes on to it, without a mark and without a row of the table. */
    readonly until?: string;
  }[];
  readonly axis: 'date' | 'number';
  /** Names what runs along ("Date", "Quantity"); head of the table's first column. */
  readonly axisLabel: string;
  readonly write: (value: string) => string;
  /** Prices hold until the next list: drawn as steps. */
  readonly isStepped?: boolean;
}

const DASHES = ['', '8 3', '2 3', '10 3 2 3', '5 5', '14 4'] as const;

/** Values along dates or numbers; series differ by colour and by dash. */
export function LineChart({ label, series, axis, axisLabel, write, isStepped = false }: LineChartProps) {
  const place = (at: string): number => (axis === 'date' ? Date.parse(at) : decimal(at).toNumber());
  const writePlace = (at: number): string =>
    axis === 'date' ? new Date(at).toISOString().slice(0, 10) : String(at);
  const places = [...new Set(series.flatMap((one) => one.points.map((point) => point.at)))].sort(
    (left, right) => place(left) - place(right),
  );
  const valueAt = (id: string, at: string): string | undefined =>
    series.find((one) => one.id === id)?.points.find((point) => point.at === at)?.value;
  const held = (one: LineChartProps['series'][number]): LinePoint | undefined => {
    const last = one.points.toSorted((left, right) => place(left.at) - place(right.at)).at(-1);
    const isLater = last && one.until !== undefined && place(one.until) > place(last.at);
    return isLater ? { at: one.until, value: last.value } : undefined;
  };
  const ends = series.flatMap((one) => held(one) ?? []).map(({ at }) => at);
  const drawn = [...new Set([...places, ...ends])].sort((left, right) => place(left) - place(right));
  // Floats only place the points; every number that is read comes from the decimal text.
  const data = drawn.map((at) => {
    const values = series.map((one): [string, number | null] => {
      const end = held(one);
      const value = valueAt(one.id, at) ?? (end?.at === at ? end.value : undefined);
      return [one.id, value === undefined ? null : decimal(value).toNumber()];
    });
    return { at: place(at), ...Object.fromEntries(values) };
  });
  const cell = (id: string, at: string): string => {
    const value = valueAt(id, at);
    return value === undefined ? '–' : write(value);
  };
  const table = {
    heads: [axisLabel, ...series.map((one) => one.label)],
    rows: places.map((at) => [at, ...series.map(({ id }) => cell(id, at))]),
  };
  return (
    <ChartFrame label={label} table={table}>
      <ul className="chart-key">
        {series.map((one, index) => (
          <li key={one.id}>
            <svg aria-hidden="true" width="30" height="12">
              <path
                d="M0 6H30"
                stroke={seriesColour(index)}
                strokeWidth={2}
                strokeDasharray={DASHES[index % 6]}
              />
            </svg>
            {one.label}
          </li>
        ))}
      </ul>
      <ResponsiveContainer width="100%" height={260}>
        <Chart data={data} margin={{ top: 8, right: 16, bottom: 0, left: 0 }}>
          <CartesianGrid vertical={false} stroke="var(--hair)" />
          <XAxis
            dataKey="at"
            type="number"
            scale={axis === 'date' ? 'time' : 'linear'}
            domain={['dataMin', 'dataMax']}
            tickFormatter={writePlace}
            minTickGap={48}
          />
          <YAxis
            width={72}
            domain={['auto', 'auto']}
            tickFormatter={(value: number) => write(String(value))}
          />
          <Tooltip
            isAnimationActive={false}
            content={({ active, label: at }) => {
              const found = active ? places.find((one) => place(one) === at) : undefined;
              return found === undefined ? null : (
                <div className="chart-tip">
                  <strong>{found}</strong>
                  <dl>
                    {series.map(({ id, label: name }) => (
                      <div key={id}>
                        <dt>{name}</dt>
                        <dd>{cell(id, found)}</dd>
                      </div>
                    ))}
                  </dl>
                </div>
              );
            }}
          />
          {series.map(({ id, label: name }, index) => (
            <Line
              key={id}
              dataKey={id}
              name={name}
              type={isStepped ? 'stepAfter' : 'linear'}
              stroke={seriesColour(index)}
              strokeWidth={2}
              strokeDasharray={DASHES[index % 6] ?? ''}
              dot={({ key, cx, cy, payload }) =>
                places.some((at) => place(at) === payload.at && valueAt(id, at) !== undefined) ? (
                  <circle
                    key={key}
                    cx={cx}
                    cy={cy}
                    r={2.5}
                    fill="var(--sheet)"
                    stroke={seriesColour(index)}
                    strokeWidth={2}
                  />
                ) : (
                  <g key={key} />
                )
              }
              connectNulls
              isAnimationActive={false}
            />
          ))}
        </Chart>
      </ResponsiveContainer>
    </ChartFrame>
  );
}
