import './chart.css';

/** Section hatchings by series, so that series differ without their colour; six, then they start again. */
const HATCHES = [
  { id: 'oblique', path: 'M-2 2 2-2M0 8 8 0M6 10 10 6' },
  { id: 'dots', path: 'M2 2h1M6 6h1' },
  { id: 'level', path: 'M0 2H8M0 6H8' },
  { id: 'crossed', path: 'M0 0 8 8M0 8 8 0' },
  { id: 'upright', path: 'M2 0V8M6 0V8' },
  { id: 'reverse', path: 'M-2 6 2 10M0 0 8 8M6-2 10 2' },
] as const;

export function seriesColour(index: number): string {
  return `var(--series-${(index % HATCHES.length) + 1})`;
}

export function hatchFill(prefix: string, index: number): string {
  return `url(#${prefix}-${HATCHES[index % HATCHES.length]?.id ?? 'oblique'})`;
}

/** The patterns a chart's series are filled with; `prefix` keeps two charts on a page apart. */
export function Hatchings({ prefix }: { readonly prefix: string }) {
  return (
    <defs>
      {HATCHES.map(({ id, path }, index) => (
        <pattern key={id} id={`${prefix}-${id}`} width="8" height="8" patternUnits="userSpaceOnUse">
          <rect width="8" height="8" fill={seriesColour(index)} fillOpacity={0.28} />
          <path d={path} stroke={seriesColour(index)} strokeWidth={1.5} fill="none" />
        </pattern>
      ))}
    </defs>
  );
}

export function SeriesKey({
  prefix,
  labels,
}: {
  readonly prefix: string;
  readonly labels: readonly string[];
}) {
  return (
    <ul className="chart-key">
      {labels.map((label, index) => (
        <li key={label}>
          <svg aria-hidden="true" width="22" height="12">
            <Hatchings prefix={`${prefix}-key-${index}`} />
            <rect
              x="0.5"
              y="0.5"
              width="21"
              height="11"
              fill={hatchFill(`${prefix}-key-${index}`, index)}
              stroke={seriesColour(index)}
            />
          </svg>
          {label}
        </li>
      ))}
    </ul>
  );
}
