import { COUNT_BOUNDS, constant, derive, type Figure, sum } from '@scantling/figures';
import type { Part } from '../bill-of-materials/index.ts';
import type { Material } from '../material/index.ts';
import { chooseStock, type StockChoice } from './choose-stock.ts';
import type { SheetContext } from './sheet-context.ts';

/** What one part takes, whatever the number of pieces. */
export interface PartNeed extends StockChoice {
  readonly part: Part;
  readonly field: string;
  readonly finishedLength: Figure<'mm'>;
  readonly finishedWidth: Figure<'mm'>;
  readonly finishedThickness: Figure<'mm'>;
  readonly roughLength: Figure<'mm'>;
  readonly roughWidth: Figure<'mm'>;
  /** Face of the rough part, one leaf. */
  readonly roughFace: Figure<'m2'>;
}

const MM2_IN_M2 = constant('square millimetres in a square metre', 'ratio', 1_000_000);

/** Length x width in mm as square metres. */
export function faceOf(label: string, length: Figure<'mm'>, width: Figure<'mm'>): Figure<'m2'> {
  return derive(label, 'm2', 'quotient', [
    derive(`${label} in mm2`, 'mm2', 'product', [length, width]),
    MM2_IN_M2,
  ]);
}

/**
 * Rough part from finished part: bands and veneers taken off, allowances for trimming and planing put on,
 * the width allowance once for every stave of a glue-up.
 * @throws CostingInputError when no stock is thick enough
 */
export function partNeed(part: Part, index: number, sheet: SheetContext): PartNeed {
  const field = `bill.parts.${index}`;
  const size = (key: 'length' | 'width' | 'thickness') =>
    sheet.fromBill(`part ${part.id}/${key}`, `${part.name}: finished ${key}`, 'mm', part[key]);
  const finishedLength = size('length');
  const finishedWidth = size('width');
  const finishedThickness = size('thickness');
  const choice = chooseStock(part, field, coreThickness(part, finishedThickness, sheet), sheet);
  const core = {
    length: lessBands(part, finishedLength, part.edgeBand?.endEdges ?? 0, sheet),
    width: lessBands(part, finishedWidth, part.edgeBand?.longEdges ?? 0, sheet),
  };
  const roughLength = sum(`${part.name}: rough length`, 'mm', [
    core.length,
    allowance('length', part, choice.stock, sheet),
  ]);
  const widthAllowance = allowance('width', part, choice.stock, sheet);
  const staves = part.staves ?? 1;
  const roughWidth = sum(`${part.name}: rough width`, 'mm', [
    core.width,
    staves === 1 && !sheet.isWorkedOut(`part ${part.id}/staves`)
      ? widthAllowance
      : stavesAllowance(part, widthAllowance, staves, sheet),
  ]);
  return {
    part,
    field,
    ...choice,
    finishedLength,
    finishedWidth,
    finishedThickness,
    roughLength,
    roughWidth,
    roughFace: faceOf(`${part.name}: rough face`, roughLength, roughWidth),
  };
}

function stavesAllowance(
  part: Part,
  allowance: Figure<'mm'>,
  staves: number,
  sheet: SheetContext,
): Figure<'mm'> {
  const count = sheet.fromBill(
    `part ${part.id}/staves`,
    `${part.name}: staves`,
    'ratio',
    String(staves),
    COUNT_BOUNDS,
  );
  return derive(`${part.name}: width allowance of ${staves} staves`, 'mm', 'product', [allowance, count]);
}

function allowance(kind: 'length' | 'width', part: Part, stock: Material, sheet: SheetContext): Figure<'mm'> {
  const own = kind === 'length' ? part.lengthAllowance : part.widthAllowance;
  if (own !== undefined) {
    return sheet.fromBill(`part ${part.id}/${kind}-allowance`, `${part.name}: ${kind} allowance`, 'mm', own);
  }
  const defaults = sheet.defaults(stock.form);
  const value = kind === 'length' ? defaults.lengthAllowance : defaults.widthAllowance;
  return sheet.allowance(stock.form, kind, `${kind} allowance`, 'mm', value);
}

function lessBands(part: Part, size: Figure<'mm'>, edges: number, sheet: SheetContext): Figure<'mm'> {
  const band = part.edgeBand;
  if (band === undefined || edges === 0) return size;
  const thickness = sheet.fromBill(
    `part ${part.id}/band-thickness`,
    `${part.name}: band thickness`,
    'mm',
    band.thickness,
  );
  const both = Array.from({ length: edges }, () => thickness);
  return derive(`${size.label}, less bands`, 'mm', 'difference', [size, sum('bands', 'mm', both)]);
}

function coreThickness(part: Part, finished: Figure<'mm'>, sheet: SheetContext): Figure<'mm'> {
  const { veneer } = part;
  if (veneer === undefined) return finished;
  const leaf = sheet.fromBill(
    `part ${part.id}/veneer-thickness`,
    `${part.name}: veneer thickness`,
    'mm',
    veneer.thickness,
  );
  const faces = Array.from({ length: veneer.faces }, () => leaf);
  return derive(`${part.name}: core thickness`, 'mm', 'difference', [finished, sum('veneers', 'mm', faces)]);
}
