import { decimal } from '@scantling/decimals';
import {
  CartesianGrid,
  LineChart as Chart,
  Line,
  ReferenceDot,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import { ChartFrame } from './chart-frame.tsx';

export interface CurveMark {
  readonly label: string;
  /** Decimal text. */
  readonly at: string;
  readonly value: string;
  /** Open: where it stands; filled: what was looked for. */
  readonly isFound: boolean;
}

export interface CurveProps {
  readonly label: string;
  readonly points: readonly { readonly at: string; readonly value: string }[];
  readonly marks: readonly CurveMark[];
  /** A value the curve is to meet, drawn across. */
  readonly level: { readonly value: string; readonly label: string };
  readonly axisLabel: string;
  readonly valueLabel: string;
  readonly writeAt: (at: string) => string;
  readonly write: (value: string) => string;
}

const DIGITS = 6;
const TICKS = 5;

/** Multiples of a pleasant step between two places. */
function pleasantTicks(low: number, high: number): number[] {
  const rough = (high - low) / TICKS;
  if (!(rough > 0)) return [low];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 2.5, 5].find((factor) => factor * power >= rough) ?? 10) * power;
  const first = Math.ceil(low / step);
  const count = Math.floor(high / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, at) => (first + at) * step);
}

/** One value as another grows, with the level it is to meet and the places where it does. */
export function Curve({ label, points, marks, level, axisLabel, valueLabel, writeAt, write }: CurveProps) {
  // Floats only place the points; every number that is read comes from the decimal text.
  const place = (text: string): number => decimal(text).toNumber();
  const plain = (value: number): string => decimal(value).toSignificantDigits(DIGITS).toFixed();
  const data = points.map(({ at, value }) => ({ at: place(at), value: place(value) }));
  const ticks = pleasantTicks(data[0]?.at ?? 0, data.at(-1)?.at ?? 0);
  const table = {
    heads: [axisLabel, valueLabel],
    rows: points.map(({ at, value }) => [writeAt(at), write(value)]),
  };
  return (
    <ChartFrame label={label} table={table}>
      <ul className="chart-key">
        <li>
          <svg aria-hidden="true" width="30" height="12">
            <path d="M0 6H30" stroke="var(--series-2)" strokeWidth={2} strokeDasharray="8 4" />
          </svg>
          {level.label}
        </li>
        {marks.map((mark) => (
          <li key={`${mark.label} ${mark.at}`}>
            <svg aria-hidden="true" width="14" height="12">
              <circle
                cx="7"
                cy="6"
                r="4.5"
                strokeWidth={2}
                stroke="var(--series-1)"
                fill={mark.isFound ? 'var(--series-1)' : 'var(--sheet)'}
              />
            </svg>
            {mark.label}
          </li>
        ))}
      </ul>
      <ResponsiveContainer width="100%" height={240}>
        <Chart data={data} margin={{ top: 12, right: 24, bottom: 0, left: 0 }}>
          <CartesianGrid vertical={false} stroke="var(--hair)" />
          <XAxis
            dataKey="at"
            type="number"
            domain={['dataMin', 'dataMax']}
            ticks={ticks}
            tickFormatter={(at: number) => writeAt(plain(at))}
            minTickGap={48}
          />
          <YAxis
            width={84}
            domain={['auto', 'auto']}
            tickFormatter={(value: number) => write(plain(value))}
          />
          <Tooltip
            isAnimationActive={false}
            content={({ active, label: at }) => {
              const found = active ? points.find((point) => place(point.at) === at) : undefined;
              return found === undefined ? null : (
                <div className="chart-tip">
                  <dl>
                    <div>
                      <dt>{axisLabel}</dt>
                      <dd>{writeAt(found.at)}</dd>
                    </div>
                    <div>
                      <dt>{valueLabel}</dt>
                      <dd>{write(found.value)}</dd>
                    </div>
                  </dl>
                </div>
              );
            }}
          />
          <ReferenceLine
            y={place(level.value)}
            stroke="var(--series-2)"
            strokeWidth={2}
            strokeDasharray="8 4"
            ifOverflow="extendDomain"
          />
          <Line
            dataKey="value"
            type="linear"
            stroke="var(--series-1)"
            strokeWidth={2}
            dot={false}
            isAnimationActive={false}
          />
          {marks.map((mark) => (
            <ReferenceDot
              key={`${mark.label} ${mark.at}`}
              x={place(mark.at)}
              y={place(mark.value)}
              r={5}
              strokeWidth={2}
              stroke="var(--series-1)"
              fill={mark.isFound ? 'var(--series-1)' : 'var(--sheet)'}
            />
          ))}
        </Chart>
      </ResponsiveContainer>
    </ChartFrame>
  );
}
