import { type Decimal, decimal } from '@scantling/decimals';
import { type Figure, NoAnswerError } from '@scantling/figures';
import type { Part } from '../bill-of-materials/index.ts';
import { CostingInputError } from '../input-error.ts';
import type { Material } from '../material/index.ts';
import { resaw } from '../resaw/index.ts';
import type { SheetContext } from './sheet-context.ts';

/** The material a part is cut from. */
export interface StockChoice {
  readonly stock: Material;
  /** Leaves sawn from one thickness of it; null when the part is not resawn. */
  readonly leaves: Figure<'each'> | null;
}

/** How thick the material is once ready to use; null where thickness does not matter. */
function readyThickness(material: Material): Decimal | null {
  if (material.form === 'rough-lumber') {
    return material.surfacedThickness === undefined ? null : decimal(material.surfacedThickness);
  }
  if (material.form === 'dimensioned-lumber' || material.form === 'sheet') {
    return material.thickness === undefined ? null : decimal(material.thickness);
  }
  return null;
}

/**
 * The thinnest stock whose surfaced thickness reaches the part. A resawn part takes the thinnest that gives
 * two leaves or more.
 * @throws CostingInputError naming the part and the thickest there is, when none fits
 */
export function chooseStock(part: Part, field: string, core: Figure<'mm'>, sheet: SheetContext): StockChoice {
  const candidates = sheet.candidates(part.material, `${field}.material`);
  for (const stock of candidates) {
    if (part.isResawn === true) {
      const leaves = leavesOf(part, stock, core, sheet);
      if (leaves !== null) return { stock, leaves };
      continue;
    }
    const thickness = readyThickness(stock);
    if (thickness === null || thickness.gte(core.value)) return { stock, leaves: null };
  }
  const thickest = candidates.at(-1);
  throw new CostingInputError(
    `${field}.thickness`,
    `is ${core.value.toString()} mm (${part.name}), more than ${part.material} gives${part.isResawn ? ' in two leaves' : ''}`,
    thickest === undefined
      ? 'choose a material'
      : `choose thicker stock than ${thickest.code}, or glue up the thickness as parts of its own`,
  );
}

function leavesOf(
  part: Part,
  stock: Material,
  core: Figure<'mm'>,
  sheet: SheetContext,
): Figure<'each'> | null {
  if (stock.nominalThickness === undefined) return null;
  const { rates, currency } = sheet.input;
  try {
    return resaw(
      {
        roughThickness: stock.nominalThickness,
        cleanUp: rates.resawCleanUp,
        kerf: rates.resawKerf,
        finishedThickness: core.value.toString(),
        planing: sheet.defaults('rough-lumber').thicknessAllowance,
      },
      {
        currency,
        keyPrefix: `resaw/${part.id}`,
        source: {
          kind: 'standard-allowance',
          text: "the part, its stock, and the workshop's kerf, clean-up and planing",
          record: 'workshop:settings',
        },
      },
    ).leaves;
  } catch (error) {
    if (error instanceof NoAnswerError) return null;
    throw error;
  }
}
