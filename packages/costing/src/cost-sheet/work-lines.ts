import { entered, type Figure, named, scale, sum, times } from '@scantling/figures';
import type { Operation } from '../bill-of-materials/index.ts';
import { CostingInputError } from '../input-error.ts';
import { type LabourRate, labourRates } from '../labour/index.ts';
import { learningTotal, readLearningCurve } from '../learning-curve/index.ts';
import { type MachineHourRate, machineHourRate } from '../machine-hour-rate/index.ts';
import { threePointMean } from '../three-point-time/index.ts';
import type { SheetContext } from './sheet-context.ts';

/** One operation of so many pieces: hands, machine and elapsed time are three different times. */
export interface WorkLine {
  readonly operation: Operation;
  readonly hours: Figure<'h'>;
  /** Glue and drying: passes without work, once per batch. */
  readonly elapsed: Figure<'h'>;
  readonly isOwner: boolean;
  readonly labour: Figure<'money'>;
  readonly machine: {
    readonly code: string;
    readonly hours: Figure<'h'>;
    /** At the replacement rate, which pricing recovers. */
    readonly cost: Figure<'money'>;
    /** At the marginal rate: what stays away if the hours do. */
    readonly avoidable: Figure<'money'>;
  } | null;
}

/** Rates of the shop, each worked out once for all columns. */
export class ShopRateFigures {
  readonly #grades: Map<string, LabourRate>;
  readonly #machines = new Map<string, { replacement: MachineHourRate; marginal: MachineHourRate }>();
  readonly #sheet: SheetContext;

  constructor(sheet: SheetContext) {
    this.#sheet = sheet;
    const context = { currency: sheet.input.currency };
    this.#grades = new Map(
      labourRates(sheet.input.rates.grades, context).map((rate) => [rate.gradeId, rate]),
    );
  }

  grade(code: string, field: string): LabourRate {
    const rate = this.#grades.get(code);
    if (rate) return rate;
    throw new CostingInputError(
      field,
      `names the labour grade "${code}", which is not there`,
      'enter the grade or correct the code',
    );
  }

  machine(code: string, field: string): { replacement: MachineHourRate; marginal: MachineHourRate } {
    const known = this.#machines.get(code);
    if (known) return known;
    const { machines, shop, averageInvestment = 'forestry' } = this.#sheet.input.rates;
    const tool = machines.find((one) => one.id === code);
    if (tool === undefined) {
      throw new CostingInputError(
        field,
        `names the machine "${code}", which is not there`,
        'enter the tool or correct the code',
      );
    }
    const options = { context: { currency: this.#sheet.input.currency }, shop, averageInvestment };
    const made = {
      replacement: machineHourRate(tool, 'replacement', options),
      marginal: machineHourRate(tool, 'marginal', options),
    };
    this.#machines.set(code, made);
    return made;
  }
}

/** Setup + run x pieces, with learning where the operation has it. */
export function workLines(
  count: number,
  pieces: Figure<'ratio'>,
  rates: ShopRateFigures,
  sheet: SheetContext,
): WorkLine[] {
  return sheet.input.bill.operations.map((operation, index) => {
    const field = `bill.operations.${index}`;
    const grade = rates.grade(operation.grade, `${field}.grade`);
    const hours = hoursOf(operation, field, count, pieces, sheet);
    return {
      operation,
      hours,
      elapsed: sheet.fromBill(
        `operation ${operation.id}/elapsed`,
        `${operation.name}: glue and drying`,
        'h',
        operation.elapsedHours,
      ),
      isOwner: grade.isOwner,
      labour: times(`${operation.name}: labour`, grade.perHour, hours),
      machine: machineOf(operation, field, hours, rates, sheet),
    };
  });
}

function hoursOf(
  operation: Operation,
  field: string,
  count: number,
  pieces: Figure<'ratio'>,
  sheet: SheetContext,
): Figure<'h'> {
  const hours = (key: string, label: string, value: string) =>
    sheet.fromBill(`operation ${operation.id}/${key}`, `${operation.name}: ${label}`, 'h', value);
  const setup = hours('setup', 'setup', operation.setupHours);
  const run = runTime(operation, field, hours);
  const all =
    operation.learningRate === undefined
      ? scale(`${operation.name}: run time of all`, run, pieces)
      : learningTotal(
          run,
          count,
          readLearningCurve(
            { model: 'unit', rate: operation.learningRate },
            {
              currency: sheet.input.currency,
              keyPrefix: `bill/operation ${operation.id}/learning`,
              source: entered('bill of materials'),
            },
          ),
        );
  return sum(`${operation.name}: hours`, 'h', [setup, all]);
}

type BillHours = (key: string, label: string, value: string) => Figure<'h'>;

/** The run time of a piece; the mean of a three-point estimate, which stands in for it once and for all. */
function runTime(operation: Operation, field: string, hours: BillHours): Figure<'h'> {
  const { name, runHours, runHoursLow, runHoursHigh } = operation;
  if (runHoursLow === undefined && runHoursHigh === undefined)
    return hours('run', 'run time of a piece', runHours);
  const given = (key: 'runHoursLow' | 'runHoursHigh', value: string | undefined) => {
    if (value !== undefined) return value;
    throw new CostingInputError(
      `${field}.${key}`,
      `is missing beside the other of ${name}`,
      'give both the least and the greatest time, or neither',
    );
  };
  return threePointMean(
    `${name}: run time of a piece, mean`,
    {
      low: hours('run-low', 'run time of a piece, low', given('runHoursLow', runHoursLow)),
      likely: hours('run', 'run time of a piece, likely', runHours),
      high: hours('run-high', 'run time of a piece, high', given('runHoursHigh', runHoursHigh)),
    },
    field,
  );
}

function machineOf(
  operation: Operation,
  field: string,
  hours: Figure<'h'>,
  rates: ShopRateFigures,
  sheet: SheetContext,
): WorkLine['machine'] {
  if (operation.machine === undefined) return null;
  const rate = rates.machine(operation.machine, `${field}.machine`);
  const share = operation.machineShare;
  const running =
    share === undefined
      ? hours
      : scale(
          `${operation.name}: machine hours`,
          hours,
          sheet.fromBill(
            `operation ${operation.id}/machine-share`,
            `${operation.name}: machine hours of an hour's work`,
            'ratio',
            share,
          ),
        );
  return {
    code: operation.machine,
    hours: running,
    cost: named(
      `${operation.name}: machine`,
      times(`${rate.replacement.toolName}`, rate.replacement.perHour, running),
    ),
    avoidable: times(`${operation.name}: machine, avoidable`, rate.marginal.perHour, running),
  };
}
