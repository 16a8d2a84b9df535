import { choose, derive, type Figure, number, per, scale, sum } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import type { LeafReader } from '../leaf-reader.ts';
import { owningLine, type RateLine, runningLine } from './rate-line.ts';
import type { Cutter, Hire, ShopCosts, Tool } from './tool.ts';
import {
  cutterPrice,
  cutterReader,
  hoursPerYear,
  lifeHours,
  lifeYears,
  perHour,
  replacementInvestment,
  replacementWear,
  yearsByHours,
} from './tool-figures.ts';

/** Rated power x load x tariff. */
export function powerLine(tool: Tool, shop: ShopCosts, reader: LeafReader, shopReader: LeafReader): RateLine {
  const rated = reader.read('ratedKw', tool.ratedKw, { label: 'rated power', unit: 'kW', from: 0 });
  const load = reader.read('load', tool.load, {
    label: 'average load while running',
    unit: 'ratio',
    from: 0,
    to: 1,
  });
  const tariff = shopReader.read('electricityPerKwh', shop.electricityPerKwh, {
    label: 'electricity',
    unit: 'money/kWh',
    from: 0,
  });
  const label = `${tool.name}: power`;
  return runningLine(
    { id: 'power', kind: 'power', label },
    derive(label, 'money/h', 'product', [rated, load, tariff]),
    hoursPerYear(tool, reader),
  );
}

/**
 * A share of straight-line depreciation of the REPLACEMENT cost, on every basis: a tool that was given still
 * wears. With `onlyByHours`, the part of it that hours cause.
 */
export function maintenanceLine(tool: Tool, reader: LeafReader, onlyByHours: boolean): RateLine {
  const hours = hoursPerYear(tool, reader);
  const share = reader.read('maintenanceShare', tool.maintenanceShare, {
    label: 'maintenance, share of straight-line depreciation',
    unit: 'ratio',
    from: 0,
  });
  const byHours = reader.read('maintenanceByHours', tool.maintenanceByHours, {
    label: 'part of maintenance that hours cause',
    unit: 'ratio',
    from: 0,
    to: 1,
  });
  const label = `${tool.name}: maintenance`;
  const all = perHour(label, scale('maintenance a year', replacementWear(tool, reader), share), hours);
  const hourly = onlyByHours ? scale(`${label} that hours cause`, all, byHours) : all;
  return runningLine({ id: 'maintenance', kind: 'maintenance', label }, hourly, hours);
}

/** (price + all sharpenings) / hours of cutting. */
export function cutterLine(tool: Tool, cutter: Cutter, index: number, reader: LeafReader): RateLine {
  const own = cutterReader(cutter, index, reader);
  const price = cutterPrice(cutter, own);
  const times = own.read('sharpenings', cutter.sharpenings, {
    label: 'sharpenings in its life',
    unit: 'ratio',
    from: 0,
    whole: true,
  });
  const sharpening = own.read('sharpeningPrice', cutter.sharpeningPrice, {
    label: 'price of a sharpening',
    unit: 'money',
    from: 0,
  });
  const life = own.read('lifeHours', cutter.lifeHours, { label: 'hours of cutting', unit: 'h', above: 0 });
  const label = `${tool.name}: ${cutter.name}`;
  const whole = sum('price and sharpenings', 'money', [price, scale('all sharpenings', sharpening, times)]);
  return runningLine(
    { id: `cutters/${cutter.id}`, kind: 'cutters', label },
    per(label, whole, life),
    hoursPerYear(tool, reader),
  );
}

/** Wear of the machine by one more hour: only where hours, not years, end its life. */
export function wearLine(tool: Tool, reader: LeafReader): RateLine | null {
  const hours = lifeHours(tool, reader);
  const byHours = yearsByHours(tool, reader);
  if (hours === null || byHours === null) return null;
  const wear = per('wear an hour', replacementInvestment(tool, reader).depreciable, hours);
  const label = `${tool.name}: wear, where hours bound its life`;
  return runningLine(
    { id: 'depreciation', kind: 'depreciation', label },
    choose(label, lifeYears(tool, reader), byHours, wear, scale('no wear by hours', wear, number(0))),
    hoursPerYear(tool, reader),
  );
}

/** The floor it stands on, a year. */
export function floorLine(tool: Tool, shop: ShopCosts, reader: LeafReader, shopReader: LeafReader): RateLine {
  const area = reader.read('floorAreaM2', tool.floorAreaM2, { label: 'floor area', unit: 'm2', from: 0 });
  const cost = shopReader.read('floorCostPerM2', shop.floorCostPerM2, {
    label: 'floor, a square metre a year',
    unit: 'money/m2',
    from: 0,
  });
  const label = `${tool.name}: floor space`;
  return owningLine(
    { id: 'floor', kind: 'floor', label },
    derive(label, 'money/year', 'product', [area, cost]),
    hoursPerYear(tool, reader),
  );
}

/** What a hired tool costs an hour. @throws CostingInputError where the hire is missing */
export function hireLine(tool: Tool, reader: LeafReader): RateLine {
  if (tool.hire === undefined)
    throw new CostingInputError('hire', 'is missing', 'enter the hire by the hour or by the day');
  const label = `${tool.name}: hire`;
  return runningLine(
    { id: 'hire', kind: 'hire', label },
    hireByTheHour(label, tool.hire, reader),
    hoursPerYear(tool, reader),
  );
}

function hireByTheHour(label: string, hire: Hire, reader: LeafReader): Figure<'money/h'> {
  if (hire.by === 'hour')
    return reader.read('hire.price', hire.price, { label: 'hire an hour', unit: 'money/h', from: 0 });
  const day = reader.read('hire.price', hire.price, { label: 'hire a day', unit: 'money', from: 0 });
  const hours = reader.read('hire.hoursPerDay', hire.hoursPerDay, {
    label: 'hours it runs in a day of hire',
    unit: 'h',
    above: 0,
    to: 24,
  });
  return per(label, day, hours);
}
