import { constant, derive, difference, type Figure, least, per, type Source, sum } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';
import type { Cutter, Tool } from './tool.ts';

/** What is bound in a tool on one basis: P, S and what wears away of it. Cutters costed apart are left out. */
export interface Investment {
  readonly cost: Figure<'money'>;
  readonly salvage: Figure<'money'>;
  readonly depreciable: Figure<'money'>;
}

/** The reader of a tool's own leaves: keys `machine/<id>/...` unless the context names another prefix. */
export function toolReader(tool: Tool, context: CostingContext): LeafReader {
  const record: Source = {
    kind: 'tool-record',
    text: `tool record "${tool.name}"`,
    record: `tool:${tool.id}`,
  };
  return new LeafReader({
    keyPrefix: `${context.keyPrefix ?? 'machine'}/${tool.id}`,
    currency: context.currency,
    source: context.source ?? record,
    subject: tool.name,
  });
}

/** The machine's own productive hours in a year. @throws CostingInputError for 0 */
export function hoursPerYear(tool: Tool, reader: LeafReader): Figure<'h/year'> {
  return reader.read('hoursPerYear', tool.hoursPerYear, {
    label: 'productive hours a year',
    unit: 'h/year',
    above: 0,
    to: 8784,
  });
}

export function lifeHours(tool: Tool, reader: LeafReader): Figure<'h'> | null {
  return tool.lifeHours === undefined
    ? null
    : reader.read('lifeHours', tool.lifeHours, { label: 'life in hours', unit: 'h', above: 0 });
}

export function lifeYears(tool: Tool, reader: LeafReader): Figure<'year'> {
  return reader.read('lifeYears', tool.lifeYears, {
    label: 'life in years',
    unit: 'year',
    above: 0,
    to: 200,
  });
}

/** Years until hours have worn it out: life in hours over hours a year; null where hours do not wear it. */
export function yearsByHours(tool: Tool, reader: LeafReader): Figure<'year'> | null {
  const hours = lifeHours(tool, reader);
  return hours === null
    ? null
    : derive(`${tool.name}: years until its hours are run`, 'year', 'quotient', [
        hours,
        hoursPerYear(tool, reader),
      ]);
}

/** N = min(life in years, life in hours / hours a year). */
export function economicLife(tool: Tool, reader: LeafReader): Figure<'year'> {
  const years = lifeYears(tool, reader);
  const byHours = yearsByHours(tool, reader);
  return byHours === null ? years : least(`${tool.name}: years it will last`, years, byHours);
}

/** P and S by what was paid; nothing for a tool that was given. @throws CostingInputError */
export function bookInvestment(tool: Tool, reader: LeafReader): Investment {
  const paid = reader.read('bookCost', tool.bookCost, { label: 'book cost', unit: 'money', from: 0 });
  if (tool.acquisition === 'given') {
    if (!paid.value.isZero())
      throw new CostingInputError(
        'bookCost',
        'is not 0 for a tool that was given',
        'enter 0, or say that the tool was bought; its replacement cost stays',
      );
    return { cost: paid, salvage: paid, depreciable: paid };
  }
  const cost = withoutCutters(paid, tool, reader, 'bookCost');
  // A tool bought below what it will fetch loses nothing in the books.
  const salvage = least(
    `${tool.name}: salvage value, at most what was paid`,
    readSalvage(tool, reader),
    cost,
  );
  return { cost, salvage, depreciable: difference(`${tool.name}: book cost to write off`, cost, salvage) };
}

/** P and S by what the same capacity costs today, whatever was paid. @throws CostingInputError */
export function replacementInvestment(tool: Tool, reader: LeafReader): Investment {
  const price = reader.read('replacementCost', tool.replacementCost, {
    label: 'replacement cost',
    unit: 'money',
    above: 0,
  });
  const cost = withoutCutters(price, tool, reader, 'replacementCost');
  const salvage = readSalvage(tool, reader);
  if (salvage.value.gt(cost.value))
    throw new CostingInputError(
      'salvage',
      'is above the replacement cost (cutters left out)',
      'enter at most what replacing the tool costs',
    );
  return { cost, salvage, depreciable: difference(`${tool.name}: wears away over its life`, cost, salvage) };
}

/** Straight-line depreciation of the replacement cost, a year: what maintenance is a share of. */
export function replacementWear(tool: Tool, reader: LeafReader): Figure<'money/year'> {
  return per(
    `${tool.name}: straight-line depreciation of replacement cost`,
    replacementInvestment(tool, reader).depreciable,
    economicLife(tool, reader),
  );
}

export function cutterReader(cutter: Cutter, index: number, reader: LeafReader): LeafReader {
  return reader.inside(`cutters.${index}`, `cutter/${cutter.id}`, cutter.name);
}

/** A yearly amount by the hour: over the machine's own productive hours. */
export function perHour(
  label: string,
  yearly: Figure<'money/year'>,
  hours: Figure<'h/year'>,
): Figure<'money/h'> {
  return derive(label, 'money/h', 'quotient', [yearly, hours]);
}

/** An hourly amount over the year's hours. */
export function perYear(
  label: string,
  hourly: Figure<'money/h'>,
  hours: Figure<'h/year'>,
): Figure<'money/year'> {
  return derive(label, 'money/year', 'product', [hourly, hours]);
}

const ONE_YEAR = constant('one year', 'year', 1);

/** What a year took, as an amount a year. */
export function aYear(label: string, amount: Figure<'money'>): Figure<'money/year'> {
  return per(label, amount, ONE_YEAR);
}

/** The hours run in one year. */
export function hoursInAYear(label: string, hours: Figure<'h/year'>): Figure<'h'> {
  return derive(label, 'h', 'product', [hours, ONE_YEAR]);
}

function readSalvage(tool: Tool, reader: LeafReader): Figure<'money'> {
  return reader.read('salvage', tool.salvage, { label: 'salvage value', unit: 'money', from: 0 });
}

function withoutCutters(
  cost: Figure<'money'>,
  tool: Tool,
  reader: LeafReader,
  field: string,
): Figure<'money'> {
  const prices = tool.cutters.flatMap((cutter, index) =>
    cutter.isInMachineCost === true ? [cutterPrice(cutter, cutterReader(cutter, index, reader))] : [],
  );
  if (prices.length === 0) return cost;
  const bare = difference(
    `${cost.label}, cutters left out`,
    cost,
    sum(`${tool.name}: cutters costed apart`, 'money', prices),
  );
  if (bare.value.lt(0))
    throw new CostingInputError(field, 'is less than its cutters cost', 'correct the cost or the cutters');
  return bare;
}

export function cutterPrice(cutter: Cutter, reader: LeafReader): Figure<'money'> {
  return reader.read('price', cutter.price, { label: 'price', unit: 'money', from: 0 });
}
