import type { WorkedMachineHourRate } from '@scantling/contracts';
import type { RateBasis } from '@scantling/costing';

/** One line of the hour rate over all bases; a basis that knows no such line has no figure. */
export interface RateRow {
  readonly id: string;
  readonly label: string;
  readonly isTotal: boolean;
  readonly figures: Readonly<Partial<Record<RateBasis, string>>>;
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
  return { id, label, isTotal, figures };
}

/** The lines of one group, each once, in the order in which the bases name them. */
function groupRows(rates: Rates, group: 'owning' | 'running'): readonly RateRow[] {
  const labels = new Map<string, string>();
  for (const line of rates.flatMap(({ lines }) => lines)) {
    if (line.group === group && !labels.has(line.id)) labels.set(line.id, line.label);
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
export function rateRows(rates: Rates): readonly RateRow[] {
  return [
    ...groupRows(rates, 'owning'),
    rowOf(rates, 'owning', 'Owning it', true, (rate) => rate.owningPerHour),
    ...groupRows(rates, 'running'),
    rowOf(rates, 'running', 'Running it', true, (rate) => rate.runningPerHour),
    rowOf(rates, 'per-hour', 'An hour of it', true, (rate) => rate.perHour),
    rowOf(rates, 'owning-per-year', 'Owning it for a year', false, (rate) => rate.owningPerYear),
    rowOf(rates, 'investment', 'Average investment', false, (rate) => rate.averageInvestment),
    rowOf(rates, 'life', 'Life it is reckoned over', false, (rate) => rate.life),
  ].filter(({ figures }) => Object.keys(figures).length > 0);
}
