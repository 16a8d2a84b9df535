import type { WorkedMachineHourRate } from '@scantling/contracts';
import type { RateBasis } from '@scantling/costing';

/** One line of the hour rate over all bases; a basis that knows no such line has no figure. */
export interface RateRow {
  readonly id: string;
  readonly label: string;
  readonly isTotal: boolean;
  /** Per hour, as the head of the table says; the others name their unit. */
  readonly isHourly: boolean;
  readonly figures: Readonly<Partial<Record<RateBasis, string>>>;
}

/** Figures name their tool, since they are read anywhere; on the tool's own sheet that says nothing. */
function shortLabel(label: string, tool: string): string {
  const start = `${tool}: `;
  const rest = label.startsWith(start) ? label.slice(start.length) : label;
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}

type Rates = readonly WorkedMachineHourRate[];

function rowOf(
  rates: Rates,
  id: string,
  label: string,
  isTotal: boolean,
  figure: (rate: WorkedMachineHourRate) => string | null | undefined,
): RateRow {
  const figures: Partial<Record<RateBasis, string>> = {};
  for (const rate of rates) {
    const found = figure(rate);
    if (found !== null && found !== undefined) figures[rate.basis] = found;
  }
  return { id, label, isTotal, isHourly: true, figures };
}

/** What the hours rest on: with a unit of its own. */
function basisRow(
  rates: Rates,
  id: string,
  label: string,
  figure: (rate: WorkedMachineHourRate) => string | null,
): RateRow {
  return { ...rowOf(rates, id, label, false, figure), isHourly: false };
}

/** The lines of one group, each once, in the order in which the bases name them. */
function groupRows(rates: Rates, tool: string, group: 'owning' | 'running'): readonly RateRow[] {
  const labels = new Map<string, string>();
  for (const line of rates.flatMap(({ lines }) => lines)) {
    if (line.group === group && !labels.has(line.id)) {
      labels.set(line.id, shortLabel(line.label, tool));
    }
  }
  return [...labels].map(([id, label]) =>
    rowOf(
      rates,
      `${group}/${id}`,
      label,
      false,
      ({ lines }) => lines.find((line) => line.id === id && line.group === group)?.perHour,
    ),
  );
}

/** Owning lines and their sum, running lines and theirs, the rate of an hour, and what it rests on. */
export function rateRows(rates: Rates, tool: string): readonly RateRow[] {
  return [
    ...groupRows(rates, tool, 'owning'),
    rowOf(rates, 'owning', 'Owning it', true, (rate) => rate.owningPerHour),
    ...groupRows(rates, tool, 'running'),
    rowOf(rates, 'running', 'Running it', true, (rate) => rate.runningPerHour),
    rowOf(rates, 'per-hour', 'An hour of it', true, (rate) => rate.perHour),
    basisRow(rates, 'owning-per-year', 'Owning it for a year', (rate) => rate.owningPerYear),
    basisRow(rates, 'investment', 'Average investment', (rate) => rate.averageInvestment),
    basisRow(rates, 'life', 'Life it is reckoned over', (rate) => rate.life),
  ].filter(({ figures }) => Object.keys(figures).length > 0);
}
