import { decimal } from '@scantling/decimals';
import { useId } from 'react';
import {
  Bar,
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import { ChartFrame } from './chart-frame.tsx';
import { Hatchings, hatchFill, seriesColour } from './hatching.tsx';

export interface HistogramProps {
  readonly label: string;
  /** Decimal text; one more than there are counts. */
  readonly edges: readonly string[];
  readonly counts: readonly number[];
  /** Share of all up to each upper edge, 0 to 1. */
  readonly cumulative: readonly number[];
  readonly marks: readonly { readonly label: string; readonly at: string }[];
  /** Names what runs along ("Cost of production"). */
  readonly axisLabel: string;
  /** What is counted ("runs"). */
  readonly counted: string;
  readonly write: (value: string) => string;
  readonly writeShare: (share: number) => string;
}

const DASHES = ['8 4', '2 3', '10 3 2 3'];

/** How many there are from step to step, and the share of all up to each. */
export function Histogram(props: HistogramProps) {
  const { label, edges, counts, cumulative, marks, axisLabel, counted, write, writeShare } = props;
  const prefix = useId();
  // Floats only place the bars; every number that is read comes from the decimal text.
  const place = (text: string): number => decimal(text).toNumber();
  const bins = counts.map((count, at) => ({
    from: edges[at] ?? '0',
    to: edges[at + 1] ?? '0',
    count,
    share: cumulative[at] ?? 0,
  }));
  // Points stand in the middle of their bar, where half of it has been counted.
  const data = bins.map((bin, at) => ({
    ...bin,
    middle: (place(bin.from) + place(bin.to)) / 2,
    percent: ((bin.share + (cumulative[at - 1] ?? 0)) / 2) * 100,
  }));
  const [first, last] = [place(edges[0] ?? '0'), place(edges.at(-1) ?? '1')];
  // Drawn to scale, a mark far away would press all bars together.
  const isDrawn = ({ at }: { readonly at: string }): boolean => place(at) >= first && place(at) <= last;
  const table = {
    heads: [axisLabel, counted, 'Up to here'],
    rows: bins.map(({ from, to, count, share }) => [
      `${write(from)} to ${write(to)}`,
      String(count),
      writeShare(share),
    ]),
  };
  return (
    <ChartFrame label={label} table={table}>
      <ul className="chart-key">
        <li>
          <svg aria-hidden="true" width="22" height="12">
            <Hatchings prefix={`${prefix}-key`} />
            <rect
              x="0.5"
              y="0.5"
              width="21"
              height="11"
              fill={hatchFill(`${prefix}-key`, 0)}
              stroke={seriesColour(0)}
            />
          </svg>
          {counted}
        </li>
        <li>
          <svg aria-hidden="true" width="30" height="12">
            <path d="M0 6H30" stroke={seriesColour(1)} strokeWidth={2} />
          </svg>
          share up to here
        </li>
        {marks.map((mark, at) => (
          <li key={mark.label}>
            <svg aria-hidden="true" width="12" height="16">
              <path d="M6 0V16" stroke="var(--ink)" strokeWidth={2} strokeDasharray={DASHES[at % 3]} />
            </svg>
            {isDrawn(mark) ? mark.label : `${mark.label} lies beyond, at ${write(mark.at)}`}
          </li>
        ))}
      </ul>
      <ResponsiveContainer width="100%" height={280}>
        <ComposedChart data={data} margin={{ top: 8, right: 8, bottom: 0, left: 0 }} barCategoryGap={0}>
          <Hatchings prefix={prefix} />
          <CartesianGrid vertical={false} stroke="var(--hair)" />
          <XAxis
            dataKey="middle"
            type="number"
            domain={[first, last]}
            tickFormatter={(at: number) => write(decimal(at).toSignificantDigits(6).toFixed())}
            minTickGap={48}
          />
          <YAxis yAxisId="count" width={56} />
          <YAxis
            yAxisId="share"
            orientation="right"
            width={56}
            domain={[0, 100]}
            tickFormatter={(percent: number) => writeShare(percent / 100)}
          />
          <Tooltip
            isAnimationActive={false}
            content={({ active, label: at }) => {
              const found = active ? data.find(({ middle }) => middle === at) : undefined;
              return found === undefined ? null : (
                <div className="chart-tip">
                  <strong>
                    {write(found.from)} to {write(found.to)}
                  </strong>
                  <dl>
                    <div>
                      <dt>{counted}</dt>
                      <dd>{found.count}</dd>
                    </div>
                    <div>
                      <dt>Up to here</dt>
                      <dd>{writeShare(found.share)}</dd>
                    </div>
                  </dl>
                </div>
              );
            }}
          />
          <Bar
            yAxisId="count"
            dataKey="count"
            fill={hatchFill(prefix, 0)}
            stroke={seriesColour(0)}
            isAnimationActive={false}
          />
          <Line
            yAxisId="share"
            dataKey="percent"
            type="linear"
            stroke={seriesColour(1)}
            strokeWidth={2}
            dot={false}
            isAnimationActive={false}
          />
          {marks.map(
            (mark, at) =>
              isDrawn(mark) && (
                <ReferenceLine
                  key={mark.label}
                  yAxisId="count"
                  x={place(mark.at)}
                  stroke="var(--ink)"
                  strokeWidth={2}
                  strokeDasharray={DASHES[at % 3] ?? ''}
                />
              ),
          )}
        </ComposedChart>
      </ResponsiveContainer>
    </ChartFrame>
  );
}
