import type { ToolInput, ToolRecord } from '@scantling/contracts';
import type { Prisma, Tool } from '../../generated/prisma/client.ts';
import { acquisitionOf, cuttersOf, depreciationOf } from '../../shop/costing-tools.ts';

function dateText(date: Date): string {
  return date.toISOString().slice(0, 10);
}

export function toTool(row: Tool): ToolRecord {
  return {
    id: row.id,
    code: row.code,
    name: row.name,
    acquisition: acquisitionOf(row),
    acquiredOn: dateText(row.acquiredOn),
    bookCost: row.bookCost.toFixed(),
    replacementCost: row.replacementCost.toFixed(),
    salvage: row.salvage.toFixed(),
    lifeYears: row.lifeYears.toFixed(),
    lifeHours: row.lifeHours?.toFixed() ?? null,
    hoursPerYear: row.hoursPerYear.toFixed(),
    depreciation: depreciationOf(row),
    interestRate: row.interestRate.toFixed(),
    insuranceTaxRate: row.insuranceTaxRate.toFixed(),
    floorAreaM2: row.floorAreaM2.toFixed(),
    ratedKw: row.ratedKw.toFixed(),
    load: row.load.toFixed(),
    maintenanceShare: row.maintenanceShare.toFixed(),
    maintenanceByHours: row.maintenanceByHours.toFixed(),
    hirePerHour: row.hirePerHour?.toFixed() ?? null,
    cutters: cuttersOf(row),
    attached: row.attached,
    soldOn: row.soldOn === null ? null : dateText(row.soldOn),
    soldFor: row.soldFor?.toFixed() ?? null,
    notes: row.notes,
    isDemo: row.isDemo,
    version: row.version,
  };
}

/** The columns of a tool as given. */
export function toColumns(given: ToolInput): Omit<Prisma.ToolUncheckedCreateInput, 'id'> {
  const { depreciation, acquiredOn, soldOn, ...rest } = given;
  const { name, ...settings } = depreciation;
  return {
    ...rest,
    acquiredOn: new Date(acquiredOn),
    soldOn: soldOn === null ? null : new Date(soldOn),
    depreciationMethod: name,
    depreciationSettings: settings,
  };
}
