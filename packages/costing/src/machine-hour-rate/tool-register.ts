import { difference, type Figure, named, number, scale, sum } from '@scantling/figures';
import type { DepreciationSchedule } from '../depreciation/index.ts';
import { CostingInputError } from '../input-error.ts';
import type { CostingContext } from '../leaf-reader.ts';
import { bookSchedule } from './book-schedule.ts';
import type { Acquisition, Tool } from './tool.ts';

/** One tool in one year; opening + addition - depreciation - disposed = closing. */
export interface RegisterRow {
  readonly toolId: string;
  readonly toolName: string;
  readonly acquisition: Acquisition;
  readonly method: string;
  readonly opening: Figure<'money'>;
  /** What came into the books in the year: the book cost in the first. */
  readonly addition: Figure<'money'>;
  readonly depreciation: Figure<'money'>;
  /** Book value that left with a disposal. */
  readonly disposed: Figure<'money'>;
  readonly closing: Figure<'money'>;
  /** Proceeds less book value, in the year of disposal. */
  readonly gain: Figure<'money'> | null;
  /** How the books write it off over all its years. */
  readonly schedule: DepreciationSchedule;
}

/** The amounts of a row, in the order a register shows them. */
export const REGISTER_AMOUNTS = ['opening', 'addition', 'depreciation', 'disposed', 'closing'] as const;
export type RegisterAmount = (typeof REGISTER_AMOUNTS)[number];

/** The register of tools for the accountant, for one calendar year. */
export interface ToolRegister {
  readonly year: number;
  readonly rows: readonly RegisterRow[];
  readonly totals: Readonly<Record<RegisterAmount | 'gain', Figure<'money'>>>;
  /** Hired tools: used, but in nobody's books here. */
  readonly leftOut: readonly string[];
  readonly note: string;
}

const NOTE = "Book values as the workshop keeps them; how tax treats each asset is the accountant's to say.";

/**
 * Book values of every owned tool in one year. Tools not yet bought and tools gone before it have no row.
 * @throws CostingInputError naming the tool and the field ("tools.3.firstYear")
 */
export function toolRegister(tools: readonly Tool[], year: number, context: CostingContext): ToolRegister {
  if (!Number.isInteger(year))
    throw new CostingInputError('year', `cannot be ${year}`, 'enter a calendar year');
  const owned = tools.filter((tool) => tool.acquisition !== 'hired');
  const rows = tools.flatMap((tool, index) =>
    tool.acquisition === 'hired' ? [] : registerRow(tool, index, year, context),
  );
  const total = (label: string, figures: readonly Figure<'money'>[]) =>
    sum(`All tools in ${year}: ${label}`, 'money', figures, context.currency);
  const amounts = (name: RegisterAmount) =>
    total(
      name,
      rows.map((row) => row[name]),
    );
  return {
    year,
    rows,
    totals: {
      opening: amounts('opening'),
      addition: amounts('addition'),
      depreciation: amounts('depreciation'),
      disposed: amounts('disposed'),
      closing: amounts('closing'),
      gain: total(
        'gain',
        rows.flatMap((row) => (row.gain === null ? [] : [row.gain])),
      ),
    },
    leftOut: tools.filter((tool) => !owned.includes(tool)).map((tool) => tool.name),
    note: NOTE,
  };
}

function registerRow(tool: Tool, index: number, year: number, context: CostingContext): RegisterRow[] {
  if (tool.firstYear === undefined)
    throw new CostingInputError(
      `tools.${index}.firstYear`,
      'is missing',
      `enter the calendar year "${tool.name}" came into the shop`,
    );
  if (year < tool.firstYear || (tool.disposal !== undefined && year > tool.disposal.year)) return [];
  const schedule = scheduleNamed(tool, index, context);
  const line = schedule.years.find((one) => one.year === year);
  const none = scale(`${tool.name}: nothing in ${year}`, schedule.cost, number(0));
  const isFirst = year === tool.firstYear;
  // After its last line a tool stays in the books at what that line left.
  const opening = line?.opening ?? schedule.years.at(-1)?.closing ?? schedule.cost;
  const after = line?.closing ?? opening;
  const gone = schedule.disposal?.year === year ? schedule.disposal : null;
  const label = (what: string) => `${tool.name}: ${what} ${year}`;
  return [
    {
      toolId: tool.id,
      toolName: tool.name,
      acquisition: tool.acquisition,
      method: schedule.methodLabel,
      opening: isFirst ? none : named(label('book value at the start of'), opening),
      addition: isFirst ? named(label('came into the books in'), schedule.cost) : none,
      depreciation: line?.expense ?? none,
      disposed: gone === null ? none : named(label('book value that left in'), gone.bookValue),
      closing: gone === null ? after : difference(label('book value at the end of'), after, gone.bookValue),
      gain: gone?.gain ?? null,
      schedule,
    },
  ];
}

function scheduleNamed(tool: Tool, index: number, context: CostingContext) {
  try {
    return bookSchedule(tool, context);
  } catch (error) {
    if (!(error instanceof CostingInputError)) throw error;
    throw new CostingInputError(`tools.${index}.${error.field}`, error.reason, error.mend);
  }
}
