import { type Figure, sum } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import { LeafReader } from '../leaf-reader.ts';
import { type Owning, owningCosts } from './owning.ts';
import { owningLine, type RateLine, runningLine } from './rate-line.ts';
import type { RateOptions } from './rate-options.ts';
import { cutterLine, floorLine, hireLine, maintenanceLine, powerLine, wearLine } from './running.ts';
import type { RateBasis, Tool } from './tool.ts';
import { hoursPerYear, perYear, toolReader } from './tool-figures.ts';

/** What an hour of a machine costs on one basis. */
export interface MachineHourRate {
  readonly toolId: string;
  readonly toolName: string;
  readonly basis: RateBasis;
  readonly lines: readonly RateLine[];
  /** P, cutters costed apart left out; null for a hired tool and on the marginal basis. */
  readonly investment: Figure<'money'> | null;
  readonly averageInvestment: Figure<'money'> | null;
  /** N = min(years, life hours / hours a year); null as above. */
  readonly life: Figure<'year'> | null;
  readonly hoursPerYear: Figure<'h/year'>;
  readonly owningPerYear: Figure<'money/year'>;
  readonly owningPerHour: Figure<'money/h'>;
  readonly runningPerHour: Figure<'money/h'>;
  /** Owning and running. */
  readonly perHour: Figure<'money/h'>;
}

/**
 * Owning costs over the machine's own hours, and running costs by the hour. book: what was paid;
 * replacement: what pricing recovers; marginal: power, cutters, maintenance that hours cause, and wear only
 * where hours bound the life. A hired tool has its hire in place of owning and maintenance.
 * @throws CostingInputError naming the field, also where a machine is attached to itself
 */
export function machineHourRate(tool: Tool, basis: RateBasis, options: RateOptions): MachineHourRate {
  const shopReader = new LeafReader({
    keyPrefix: 'shop',
    currency: options.context.currency,
    source: options.context.source ?? {
      kind: 'shop-rate',
      text: "the workshop's yearly rates",
      record: 'workshop:settings',
    },
    subject: 'Shop',
  });
  return rateOf(tool, basis, options, shopReader, []);
}

function rateOf(
  tool: Tool,
  basis: RateBasis,
  options: RateOptions,
  shopReader: LeafReader,
  hosts: readonly string[],
): MachineHourRate {
  if (hosts.includes(tool.id))
    throw new CostingInputError('attached', `leads back to "${tool.name}"`, 'take it out of the chain');
  const { context, shop } = options;
  const reader = toolReader(tool, context);
  const hours = hoursPerYear(tool, reader);
  const isOwned = tool.acquisition !== 'hired';
  if (isOwned && tool.hire !== undefined)
    throw new CostingInputError('hire', 'is given for a tool that is not hired', 'leave it out');
  const isMarginal = basis === 'marginal';
  const owning = isOwned && !isMarginal ? owningCosts(tool, basis, reader, options) : null;
  const wear = isOwned && isMarginal ? wearLine(tool, reader) : null;
  const lines: readonly RateLine[] = [
    ...(owning?.lines ?? []),
    ...(isMarginal ? [] : [floorLine(tool, shop, reader, shopReader)]),
    ...(isOwned ? [] : [hireLine(tool, reader)]),
    powerLine(tool, shop, reader, shopReader),
    ...(isOwned ? [maintenanceLine(tool, reader, isMarginal)] : []),
    ...(wear === null ? [] : [wear]),
    ...tool.cutters.map((cutter, index) => cutterLine(tool, cutter, index, reader)),
    ...tool.attached.flatMap((other) =>
      attachedLines(tool, rateOf(other, basis, options, shopReader, [...hosts, tool.id]), hours),
    ),
  ];
  return added(tool, basis, options, lines, owning, hours);
}

/** The whole rate of a machine that runs along: its owning costs over its OWN hours, and its running costs. */
function attachedLines(tool: Tool, rate: MachineHourRate, hours: Figure<'h/year'>): RateLine[] {
  const label = (what: string) => `${tool.name}: ${rate.toolName} running along, ${what}`;
  const id = `attached/${rate.toolId}`;
  const running = runningLine(
    { id: `${id}/running`, kind: 'attached', label: label('running') },
    rate.runningPerHour,
    hours,
  );
  if (rate.owningPerHour.value.isZero()) return [running];
  const naming = { id: `${id}/owning`, kind: 'attached', label: label('owning') } as const;
  const yearly = perYear(`${naming.label}, in this machine's hours`, rate.owningPerHour, hours);
  return [owningLine(naming, yearly, hours), running];
}

function added(
  tool: Tool,
  basis: RateBasis,
  { context: { currency } }: RateOptions,
  lines: readonly RateLine[],
  owning: Owning | null,
  hours: Figure<'h/year'>,
): MachineHourRate {
  const hourly = (label: string, group: RateLine['group']) =>
    sum(
      `${tool.name}: ${label}`,
      'money/h',
      lines.filter((line) => line.group === group).map((line) => line.perHour),
      currency,
    );
  const owningPerHour = hourly('owning an hour', 'owning');
  const runningPerHour = hourly('running an hour', 'running');
  return {
    toolId: tool.id,
    toolName: tool.name,
    basis,
    lines,
    investment: owning?.investment.cost ?? null,
    averageInvestment: owning?.averageInvestment ?? null,
    life: owning?.life ?? null,
    hoursPerYear: hours,
    owningPerYear: sum(
      `${tool.name}: owning a year`,
      'money/year',
      lines.filter((line) => line.group === 'owning').map((line) => line.perYear),
      currency,
    ),
    owningPerHour,
    runningPerHour,
    perHour: sum(`${tool.name}: machine-hour rate (${basis})`, 'money/h', [owningPerHour, runningPerHour]),
  };
}
