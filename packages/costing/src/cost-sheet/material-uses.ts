import { constant, derive, divide, type Figure, number, roundDown, scale, sum } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import { finishUses } from './finish-uses.ts';
import type { MaterialUse } from './material-use.ts';
import { faceOf, type PartNeed } from './part-need.ts';
import { assemblyCount, type PartCut, partsToCut } from './parts-to-cut.ts';
import type { SheetContext } from './sheet-context.ts';
import { useUnit } from './use-quantity.ts';

const MM_IN_M = constant('millimetres in a metre', 'ratio', 1000);

/** Everything that so many pieces need, row by row. */
export function materialUses(
  needs: readonly PartNeed[],
  pieces: Figure<'ratio'>,
  sheet: SheetContext,
): MaterialUse[] {
  const cuts = needs.map((need): PartCut => ({ need, count: partsToCut(need, pieces, sheet) }));
  return [
    ...cuts.flatMap(({ need, count }) => [
      stockUse(need, count, sheet),
      ...bandUse(need, count, sheet),
      ...veneerUse(need, count, sheet),
    ]),
    ...componentUses(pieces, sheet),
    ...finishUses(cuts, sheet),
    ...consumableUses(pieces, sheet),
  ];
}

function stockUse(need: PartNeed, count: Figure<'ratio'>, sheet: SheetContext): MaterialUse {
  const { part, stock } = need;
  const stocks =
    need.leaves === null
      ? count
      : derive(`${part.name}: thicknesses to saw`, 'ratio', 'quotient', [count, need.leaves]);
  const quantity = (() => {
    switch (stock.form) {
      case 'rough-lumber':
      case 'sheet':
      case 'area':
        return scale(`${part.name}: rough face of all`, need.roughFace, stocks);
      case 'dimensioned-lumber':
      case 'length':
        return lengthOf(need, stocks, sheet);
      case 'each':
      case 'pack':
        return derive(`${part.name}: number`, 'each', 'same', [stocks]);
      default:
        throw new CostingInputError(
          `${need.field}.material`,
          `names ${stock.code}, a material sold by ${stock.form}`,
          'cut parts from lumber, sheets, lengths or blanks',
        );
    }
  })();
  return { material: stock, class: 'direct-materials', quantity, field: need.field };
}

/** Length to crosscut; a board wide enough gives several parts side by side. */
function lengthOf(need: PartNeed, count: Figure<'ratio'>, sheet: SheetContext): Figure<'lin m'> {
  const { part, stock } = need;
  const each = derive(`${part.name}: rough length in m`, 'lin m', 'quotient', [need.roughLength, MM_IN_M]);
  const all = scale(`${part.name}: length of all`, each, count);
  if (stock.form !== 'dimensioned-lumber' || stock.width === undefined) return all;
  const width = sheet.fromMaterial(stock, 'width', `${stock.name}: width`, 'mm', stock.width);
  const kerf = sheet.leaf('shop/kerf', 'kerf', 'mm', sheet.input.rates.kerf, {
    kind: 'shop-rate',
    text: "the workshop's saw kerf",
    record: 'workshop:settings',
  });
  if (need.finishedWidth.value.eq(width.value)) return all;
  const step = sum('part and kerf', 'mm', [need.roughWidth, kerf]);
  const across = roundDown(
    'parts side by side',
    derive('widths in the board', 'ratio', 'quotient', [sum('board and kerf', 'mm', [width, kerf]), step]),
    number(1),
  );
  if (across.value.lt(1)) {
    throw new CostingInputError(
      `${need.field}.width`,
      `is wider than ${stock.name}`,
      'choose wider stock, or give the number of staves',
    );
  }
  return divide(`${part.name}: length to buy`, all, across);
}

function bandUse(need: PartNeed, count: Figure<'ratio'>, sheet: SheetContext): MaterialUse[] {
  const { part } = need;
  const band = part.edgeBand;
  if (band === undefined) return [];
  const material = sheet.material(band.material, `${need.field}.edgeBand.material`);
  const sides = [
    ...Array.from({ length: band.longEdges }, () => need.finishedLength),
    ...Array.from({ length: band.endEdges }, () => need.finishedWidth),
  ];
  const metres = derive(`${part.name}: bands of one in m`, 'lin m', 'quotient', [
    sum(`${part.name}: bands of one`, 'mm', sides),
    MM_IN_M,
  ]);
  return [
    {
      material,
      class: 'direct-materials',
      quantity: scale(`${part.name}: bands`, metres, count),
      field: `${need.field}.edgeBand`,
    },
  ];
}

function veneerUse(need: PartNeed, count: Figure<'ratio'>, sheet: SheetContext): MaterialUse[] {
  const { part } = need;
  if (part.veneer === undefined) return [];
  const material = sheet.material(part.veneer.material, `${need.field}.veneer.material`);
  const face = faceOf(`${part.name}: veneered face`, need.roughLength, need.roughWidth);
  const quantity = scale(`${part.name}: veneer`, face, number(part.veneer.faces, 'faces'), count);
  return [{ material, class: 'direct-materials', quantity, field: `${need.field}.veneer` }];
}

function componentUses(pieces: Figure<'ratio'>, sheet: SheetContext): MaterialUse[] {
  return sheet.input.bill.components.map((component, index) => {
    const field = `bill.components.${index}`;
    const material = sheet.material(component.material, `${field}.material`);
    const one = sheet.fromBill(
      `component ${component.id}/quantity`,
      `${component.name}: number`,
      useUnit(material.form),
      component.quantity,
    );
    const quantity = scale(component.name, one, ...assemblyCount(component.assembly, sheet), pieces);
    return { material, class: material.form === 'service' ? 'subcontract' : 'bought-in', quantity, field };
  });
}

function consumableUses(pieces: Figure<'ratio'>, sheet: SheetContext): MaterialUse[] {
  return sheet.input.bill.consumables.map((consumable, index) => {
    const field = `bill.consumables.${index}`;
    const material = sheet.material(consumable.material, `${field}.material`);
    const one = sheet.fromBill(
      `consumable ${consumable.id}/quantity`,
      consumable.name,
      useUnit(material.form),
      consumable.quantity,
    );
    const quantity = consumable.per === 'batch' ? one : scale(`${consumable.name} for all`, one, pieces);
    return { material, class: 'consumables', quantity, field };
  });
}
