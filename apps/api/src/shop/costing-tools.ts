import { toolDepreciationSchema, toolInputSchema } from '@scantling/contracts';
import { ACQUISITIONS, CostingInputError, type Tool } from '@scantling/costing';
import type { Prisma, Tool as ToolRow } from '../generated/prisma/client.ts';

const cuttersSchema = toolInputSchema.shape.cutters;

/** How the books write a tool off, as the record keeps it: the method's name beside its settings. */
export function depreciationOf(row: ToolRow) {
  const settings = row.depreciationSettings;
  const given = typeof settings === 'object' && settings !== null ? settings : {};
  return toolDepreciationSchema.parse({ ...given, name: row.depreciationMethod });
}

export function acquisitionOf(row: ToolRow) {
  return ACQUISITIONS.find((one) => one === row.acquisition) ?? 'used';
}

export function cuttersOf(row: ToolRow) {
  return cuttersSchema.parse(row.cutters);
}

// The month it came counts as a whole one.
function monthsLeft(date: Date): number {
  return 12 - date.getUTCMonth();
}

function bare(row: ToolRow): Omit<Tool, 'attached'> {
  return {
    id: row.code,
    name: row.name,
    acquisition: acquisitionOf(row),
    bookCost: row.bookCost.toFixed(),
    replacementCost: row.replacementCost.toFixed(),
    salvage: row.salvage.toFixed(),
    lifeYears: row.lifeYears.toFixed(),
    ...(row.lifeHours === null ? {} : { lifeHours: row.lifeHours.toFixed() }),
    hoursPerYear: row.hoursPerYear.toFixed(),
    depreciation: depreciationOf(row),
    interestRate: row.interestRate.toFixed(),
    insuranceTaxRate: row.insuranceTaxRate.toFixed(),
    floorAreaM2: row.floorAreaM2.toFixed(),
    ratedKw: row.ratedKw.toFixed(),
    load: row.load.toFixed(),
    maintenanceShare: row.maintenanceShare.toFixed(),
    maintenanceByHours: row.maintenanceByHours.toFixed(),
    cutters: cuttersOf(row).map((cutter, index) => ({ ...cutter, id: String(index + 1) })),
    ...(row.hirePerHour === null ? {} : { hire: { by: 'hour', price: row.hirePerHour.toFixed() } }),
    firstYear: row.acquiredOn.getUTCFullYear(),
    monthsInFirstYear: monthsLeft(row.acquiredOn),
    ...(row.soldOn === null
      ? {}
      : {
          disposal: {
            year: row.soldOn.getUTCFullYear(),
            // The month it left counts as a whole one; in the year it came, only from the month it came.
            months: monthsInYearOfSale(row.acquiredOn, row.soldOn),
            proceeds: row.soldFor?.toFixed() ?? '0',
          },
        }),
  };
}

function monthsInYearOfSale(acquired: Date, sold: Date): number {
  const isSameYear = acquired.getUTCFullYear() === sold.getUTCFullYear();
  return sold.getUTCMonth() + 1 - (isSameYear ? acquired.getUTCMonth() : 0);
}

/**
 * Tools as costing takes them: id = code, machines that run along resolved.
 * @throws CostingInputError `attached` where a code is nobody's, or a machine leads back to itself
 */
export function toCostingTools(rows: readonly ToolRow[]): Tool[] {
  const byCode = new Map(rows.map((row) => [row.code, row]));
  const made = new Map<string, Tool>();
  const make = (row: ToolRow, hosts: readonly string[]): Tool => {
    const known = made.get(row.code);
    if (known !== undefined) return known;
    const attached = row.attached.map((code) => {
      const other = byCode.get(code);
      if (other === undefined)
        throw new CostingInputError(
          'attached',
          `names "${code}", which is no tool`,
          'name the code of a tool record',
        );
      if (code === row.code || hosts.includes(code))
        throw new CostingInputError(
          'attached',
          `leads from "${code}" back to itself`,
          'take one out of the chain',
        );
      return make(other, [...hosts, row.code]);
    });
    const tool: Tool = { ...bare(row), attached };
    made.set(row.code, tool);
    return tool;
  };
  return rows.map((row) => make(row, []));
}

/** Every tool record as costing takes it, by code. @throws CostingInputError */
export async function readCostingTools(
  database: Prisma.TransactionClient,
  options: { isInUse?: boolean } = {},
): Promise<Tool[]> {
  const rows = await database.tool.findMany({ orderBy: { code: 'asc' } });
  const gone = new Set(rows.filter((row) => row.soldOn !== null).map((row) => row.code));
  const tools = toCostingTools(rows);
  return options.isInUse === true ? tools.filter((tool) => !gone.has(tool.id)) : tools;
}
