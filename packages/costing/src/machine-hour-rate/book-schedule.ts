import type { Figure } from '@scantling/figures';
import {
  type AssetFigures,
  type DepreciationMethod,
  type DepreciationSchedule,
  firstYearShare,
  scheduleOf,
} from '../depreciation/index.ts';
import { CostingInputError } from '../input-error.ts';
import type { CostingContext, LeafReader } from '../leaf-reader.ts';
import type { Tool } from './tool.ts';
import {
  bookInvestment,
  economicLife,
  hoursInAYear,
  hoursPerYear,
  lifeHours,
  toolReader,
  yearsByHours,
} from './tool-figures.ts';

/**
 * How the books write a tool off, over min(years, life hours / hours a year) where the method goes by
 * years. @throws CostingInputError naming the field, also for a hired tool, which is in nobody's books here
 */
export function bookSchedule(
  tool: Tool,
  context: CostingContext,
  reader = toolReader(tool, context),
): DepreciationSchedule {
  if (tool.acquisition === 'hired')
    throw new CostingInputError('acquisition', 'is hired', 'leave hired tools out: they are not owned');
  const { cost, salvage, depreciable } = bookInvestment(tool, reader);
  const figures: AssetFigures = {
    id: tool.id,
    name: tool.name,
    currency: context.currency,
    reader,
    cost,
    salvage,
    depreciable,
    firstShare: firstYearShare(tool, reader),
    firstYear: tool.firstYear ?? 1,
    disposal: tool.disposal ?? null,
    life: (): Figure<'year'> => economicLife(tool, reader),
  };
  return scheduleOf(bookMethod(tool, reader), figures);
}

function bookMethod(tool: Tool, reader: LeafReader): DepreciationMethod {
  const { depreciation } = tool;
  if (depreciation.name !== 'units-of-production') return depreciation;
  const life = lifeHours(tool, reader);
  const years = yearsByHours(tool, reader);
  if (life === null || years === null)
    throw new CostingInputError(
      'lifeHours',
      'is missing',
      'enter the life in hours, or another depreciation method',
    );
  reader.know('depreciation.lifeUnits', life);
  if (depreciation.hoursByYear !== undefined)
    return {
      name: 'units-of-production',
      unit: 'h',
      lifeUnits: life.value,
      unitsByYear: depreciation.hoursByYear,
    };
  const planned = hoursInAYear(`${tool.name}: hours planned in a year`, hoursPerYear(tool, reader));
  const unitsByYear = Array.from({ length: years.value.ceil().toNumber() }, (_, index) => {
    reader.know(`depreciation.unitsByYear.${index}`, planned);
    return planned.value;
  });
  return { name: 'units-of-production', unit: 'h', lifeUnits: life.value, unitsByYear };
}
