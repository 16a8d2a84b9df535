import { decimal } from '@scantling/decimals';
import { useId } from 'react';
import { Bar, BarChart, LabelList, ReferenceLine, ResponsiveContainer, XAxis, YAxis } from 'recharts';
import { ChartFrame, type ChartTable } from './chart-frame.tsx';
import { Hatchings, hatchFill, seriesColour } from './hatching.tsx';

export interface WaterfallStep {
  readonly id: string;
  readonly label: string;
  /** Decimal text; what it adds to what the steps before it come to. */
  readonly moves: string;
  /** The last one: all steps together, from nothing. */
  readonly isTotal?: boolean;
}

export interface WaterfallProps {
  readonly label: string;
  readonly steps: readonly WaterfallStep[];
  /** Writes a move with its sign and unit ("+$12.00"). */
  readonly write: (value: string) => string;
  /** The same numbers, for those who read rather than look. */
  readonly table: ChartTable;
}

const ROW_HEIGHT = 36;

/** Lying bars one after the other, each beginning where the one before ended: how moves add up to a whole. */
export function Waterfall({ label, steps, write, table }: WaterfallProps) {
  const prefix = useId();
  // Floats only place the bars; every number that is read comes from the decimal text.
  let reached = decimal(0);
  const data = steps.map((step) => {
    const from = step.isTotal ? decimal(0) : reached;
    const to = from.plus(decimal(step.moves));
    reached = to;
    return {
      label: step.label,
      span: [from.toNumber(), to.toNumber()].sort((left, right) => left - right),
      written: write(step.moves),
    };
  });
  return (
    <ChartFrame label={label} table={table}>
      <ResponsiveContainer width="100%" height={steps.length * ROW_HEIGHT + ROW_HEIGHT}>
        <BarChart
          data={data}
          layout="vertical"
          margin={{ top: 4, right: 96, bottom: 0, left: 0 }}
          barCategoryGap={8}
        >
          <Hatchings prefix={prefix} />
          <XAxis type="number" tickFormatter={(value: number) => write(String(value))} minTickGap={48} />
          <YAxis type="category" dataKey="label" width={104} tickLine={false} />
          <ReferenceLine x={0} stroke="var(--outline)" />
          <Bar
            dataKey="span"
            isAnimationActive={false}
            shape={({ x, y, width, height, index }: BarPlace) => (
              <rect
                x={x}
                y={y}
                width={Math.max(Math.abs(width), 1)}
                height={height}
                fill={hatchFill(prefix, index)}
                stroke={seriesColour(index)}
              />
            )}
          >
            <LabelList dataKey="written" position="right" />
          </Bar>
        </BarChart>
      </ResponsiveContainer>
    </ChartFrame>
  );
}

interface BarPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly index: number;
}
