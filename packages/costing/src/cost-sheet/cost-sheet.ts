import { COUNT_BOUNDS, type Figure, input, sum } from '@scantling/figures';
import type { Bill } from '../bill-of-materials/index.ts';
import { drawnField, requireSized, type SizedParameter } from '../design-parameters/index.ts';
import { CostingInputError } from '../input-error.ts';
import { type Price, price } from '../price/index.ts';
import { type CostClasses, costClasses, type Hours, hoursOfWork } from './cost-classes.ts';
import type { CostSheetInput } from './cost-sheet-input.ts';
import { type FreightLine, freightLines, supplierOrders } from './freight-lines.ts';
import { type MaterialLine, materialLines, type UnpricedMaterial } from './material-lines.ts';
import { materialUses } from './material-uses.ts';
import { type SheetNotice, sheetNotices } from './notices/index.ts';
import { OwnValues } from './own-values.ts';
import { type PartNeed, partNeed } from './part-need.ts';
import { perPiece } from './per-piece.ts';
import { SheetContext } from './sheet-context.ts';
import { weightOf } from './weight.ts';
import { ShopRateFigures, type WorkLine, workLines } from './work-lines.ts';

/** The sheet at one number of pieces; amounts are for the whole batch, `perPiece` for one. */
export interface CostColumn {
  readonly quantity: number;
  readonly materials: readonly MaterialLine[];
  /** What nothing prices: cost and price leave it out. */
  readonly unpriced: readonly UnpricedMaterial[];
  /** Carriage to the workshop, a line for each supplier that asks for it. */
  readonly freightIn: readonly FreightLine[];
  readonly work: readonly WorkLine[];
  readonly hours: Hours;
  readonly classes: CostClasses;
  readonly price: Price;
  readonly perPiece: {
    readonly cost: Figure<'money'>;
    readonly price: Figure<'money'>;
    readonly hours: Figure<'h'>;
  };
}

export interface CostSheet {
  readonly input: CostSheetInput;
  /** What is costed: the bill under the choice of variant and values. */
  readonly bill: Bill;
  readonly parameters: readonly SizedParameter[];
  readonly columns: readonly CostColumn[];
  readonly parts: readonly PartNeed[];
  /** Of one piece, parts with a known density only. */
  readonly weight: { readonly mass: Figure<'kg'>; readonly partsWithoutDensity: readonly string[] };
  readonly notices: readonly SheetNotice[];
  /** False where a material has no price, so that cost and price are too low. */
  readonly isComplete: boolean;
}

const MOST_QUANTITIES = 12;

/**
 * The costed design at every quantity asked for, on a date, under a basis.
 * @throws CostingInputError naming the field of the input and the mend; CurrencyMismatchError; NoAnswerError
 */
export function costSheet(given: CostSheetInput): CostSheet {
  checkQuantities(given.quantities);
  const { bill, parameters, variants, variant, parameterValues: values, lengthUnit = 'mm', ...rest } = given;
  const sized = requireSized(
    { bill, parameters: parameters ?? [], variants: variants ?? [] },
    { variant: variant ?? null, values: values ?? {} },
    lengthUnit,
  );
  const sheet = new SheetContext({ ...rest, bill: sized.bill }, sized.figures);
  try {
    const own = new OwnValues(given.ownValues ?? []);
    const worked = workedOut(sheet, own);
    return { input: given, bill: sized.bill, parameters: own.within(sized.parameters), ...worked };
  } catch (error) {
    if (!(error instanceof CostingInputError)) throw error;
    throw new CostingInputError(drawnField(error.field, sized.kept), error.reason, error.mend);
  }
}

/** Own values take their place at the end: what was chosen on the way (prices, stock) stays as the records have it. */
function workedOut(sheet: SheetContext, own: OwnValues) {
  const { bill, quantities } = sheet.input;
  const needs = bill.parts.map((part, index) => partNeed(part, index, sheet));
  const rates = new ShopRateFigures(sheet);
  const parts = own.within(needs);
  const columns = own.within(quantities.map((quantity) => column(quantity, needs, rates, sheet)));
  const weight = own.within(weightOf(needs, sheet));
  const noticed = columns.map((one) => ({
    ...one,
    parts,
    orders: own.within(supplierOrders(one.materials, sheet)),
  }));
  return {
    parts,
    columns,
    weight,
    notices: [...sheetNotices(noticed, sheet), ...own.gone(quantities)],
    isComplete: columns.every((one) => one.unpriced.length === 0),
  };
}

function column(
  quantity: number,
  parts: readonly PartNeed[],
  rates: ShopRateFigures,
  sheet: SheetContext,
): CostColumn {
  const source = { kind: 'entered', text: `numbers of pieces asked for: column of ${quantity}` } as const;
  const pieces = input({
    key: `quantity/${quantity}`,
    label: 'pieces',
    unit: 'ratio',
    value: quantity,
    source,
    bounds: COUNT_BOUNDS,
  });
  const { lines: materials, unpriced } = materialLines(materialUses(parts, pieces, sheet), sheet);
  const freightIn = freightLines(supplierOrders(materials, sheet), sheet);
  const bought = [...materials, ...freightIn];
  const work = workLines(quantity, pieces, rates, sheet);
  const hours = hoursOfWork(work, sheet);
  const classes = costClasses(bought, work, hours, sheet);
  const priced = priceOf(bought, work, hours, classes, pieces, sheet);
  return {
    quantity,
    materials,
    unpriced,
    freightIn,
    work,
    hours,
    classes,
    price: priced,
    perPiece: {
      cost: perPiece('cost of a piece', classes.costOfProduction, pieces),
      price: perPiece('price of a piece', priced.netPrice, pieces),
      hours: perPiece('hours of a piece', hours.work, pieces),
    },
  };
}

function priceOf(
  bought: readonly (MaterialLine | FreightLine)[],
  work: readonly WorkLine[],
  hours: Hours,
  classes: CostClasses,
  pieces: Figure<'ratio'>,
  sheet: SheetContext,
): Price {
  const { currency, terms } = sheet.input;
  const money = (label: string, figures: readonly Figure<'money'>[]) =>
    sum(label, 'money', figures, currency);
  const labourOf = (isOwner: boolean) =>
    work.filter((line) => line.isOwner === isOwner).map((line) => line.labour);
  return price(
    {
      pieces,
      costOfProduction: classes.costOfProduction,
      materials: money('materials, bought-in and subcontract', [
        classes.directMaterials,
        classes.boughtIn,
        classes.subcontract,
      ]),
      labour: classes.directLabour,
      machines: classes.machines,
      ownerLabour: money("the owner's labour", labourOf(true)),
      ownerHours: hours.owner,
      avoidable: money("avoidable cost, without the owner's hours", [
        ...bought.map((line) => line.charged),
        ...labourOf(false),
        ...work.flatMap((line) => (line.machine === null ? [] : [line.machine.avoidable])),
        classes.freight,
      ]),
    },
    terms,
    { currency, source: { kind: 'entered', text: 'terms of this cost sheet' } },
  );
}

function checkQuantities(quantities: readonly number[]): void {
  if (quantities.length === 0 || quantities.length > MOST_QUANTITIES) {
    throw new CostingInputError(
      'quantities',
      `cannot be ${quantities.length} numbers`,
      `give 1 to ${MOST_QUANTITIES} different numbers of pieces`,
    );
  }
  quantities.forEach((quantity, index) => {
    if (!Number.isInteger(quantity) || quantity < 1 || quantity > 2000) {
      throw new CostingInputError(
        `quantities.${index}`,
        `cannot be ${quantity}`,
        'enter a whole number of pieces from 1 to 2000',
      );
    }
    if (quantities.indexOf(quantity) !== index) {
      throw new CostingInputError(
        `quantities.${index}`,
        `is ${quantity} again`,
        'give each number of pieces once',
      );
    }
  });
}
