import { COSTING_BASES, type CostColumn, type CostSheet } from '@scantling/costing';
import { type Figure, FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { currencySchema, figureId, figureTableSchema } from '../figures.ts';
import { calendarDate } from '../record.ts';

const CLASSES = [
  'directMaterials',
  'boughtIn',
  'directLabour',
  'subcontract',
  'primeCost',
  'machines',
  'consumables',
  'workshopOverhead',
  'worksCost',
  'administrationOverhead',
  'freight',
  'contingency',
  'costOfProduction',
] as const;

const materialLineSchema = z.strictObject({
  code: z.string(),
  name: z.string(),
  class: z.enum(['direct-materials', 'bought-in', 'subcontract', 'consumables']),
  /** Why this price was taken. */
  rule: z.string(),
  supplier: z.string(),
  listDate: calendarDate,
  priceLineId: z.string(),
  leadDays: z.number().int().nullable(),
  needed: figureId,
  used: figureId,
  bought: figureId,
  boughtCost: figureId,
  charged: figureId,
  offcutValue: figureId,
  loss: figureId,
});

const workLineSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  grade: z.string(),
  isOwner: z.boolean(),
  machine: z.string().nullable(),
  hours: figureId,
  labour: figureId,
  machineCost: figureId.nullable(),
});

const columnSchema = z.strictObject({
  quantity: z.number().int(),
  materials: z.array(materialLineSchema),
  work: z.array(workLineSchema),
  hours: z.strictObject({ work: figureId, machine: figureId, owner: figureId }),
  classes: z.strictObject(
    Object.fromEntries(CLASSES.map((name) => [name, figureId])) as Record<
      (typeof CLASSES)[number],
      typeof figureId
    >,
  ),
  price: z.strictObject({
    listPrice: figureId,
    netPrice: figureId,
    profit: figureId,
    margin: figureId.nullable(),
    markup: figureId.nullable(),
    hourlyEarnings: figureId.nullable(),
    floorPrice: figureId,
  }),
  perPiece: z.strictObject({ cost: figureId, price: figureId, hours: figureId }),
});

/** A worked-out cost sheet: everything that is a number is the id of a figure in `figures`. */
export const workedCostSheetSchema = z
  .strictObject({
    currency: currencySchema,
    onDate: calendarDate,
    basis: z.enum(COSTING_BASES),
    columns: z.array(columnSchema),
    parts: z.array(
      z.strictObject({
        id: z.string(),
        name: z.string(),
        stock: z.string(),
        roughLength: figureId,
        roughWidth: figureId,
        roughFace: figureId,
      }),
    ),
    weight: z.strictObject({ mass: figureId, partsWithoutDensity: z.array(z.string()) }),
    figures: figureTableSchema,
  })
  .meta({ id: 'WorkedCostSheet' });
export type WorkedCostSheet = z.output<typeof workedCostSheetSchema>;

/** The answer for a sheet; the web's live preview makes it from the same function. */
export function toWorkedCostSheet(sheet: CostSheet, options: { withDerivations: boolean }): WorkedCostSheet {
  const table = new FigureTableBuilder(options);
  const columns = sheet.columns.map((column) => toColumn(column, table));
  const parts = sheet.parts.map((need) => ({
    id: need.part.id,
    name: need.part.name,
    stock: need.stock.code,
    roughLength: table.add(`part/${need.part.id}/rough-length`, need.roughLength),
    roughWidth: table.add(`part/${need.part.id}/rough-width`, need.roughWidth),
    roughFace: table.add(`part/${need.part.id}/rough-face`, need.roughFace),
  }));
  const weight = {
    mass: table.add('weight', sheet.weight.mass),
    partsWithoutDensity: [...sheet.weight.partsWithoutDensity],
  };
  const { currency, onDate, basis } = sheet.input;
  return { currency, onDate, basis, columns, parts, weight, figures: table.table() };
}

function toColumn(column: CostColumn, table: FigureTableBuilder): WorkedCostSheet['columns'][number] {
  const at = `pieces-${column.quantity}`;
  const add = (name: string, figure: Figure) => table.add(`${at}/${name}`, figure);
  const maybe = (name: string, figure: Figure | null) => (figure === null ? null : add(name, figure));
  const { classes, hours, price, perPiece } = column;
  return {
    quantity: column.quantity,
    classes: Object.fromEntries(CLASSES.map((name) => [name, add(name, classes[name])])) as Record<
      (typeof CLASSES)[number],
      string
    >,
    price: {
      listPrice: add('price/list', price.listPrice),
      netPrice: add('price/net', price.netPrice),
      profit: add('price/profit', price.profit),
      margin: maybe('price/margin', price.margin),
      markup: maybe('price/markup', price.markup),
      hourlyEarnings: maybe('price/hourly-earnings', price.hourlyEarnings),
      floorPrice: add('price/floor', price.floorPrice),
    },
    perPiece: {
      cost: add('piece/cost', perPiece.cost),
      price: add('piece/price', perPiece.price),
      hours: add('piece/hours', perPiece.hours),
    },
    hours: {
      work: add('hours/work', hours.work),
      machine: add('hours/machine', hours.machine),
      owner: add('hours/owner', hours.owner),
    },
    materials: column.materials.map((line) => {
      const key = `${line.class}/${line.material.code}`;
      return {
        code: line.material.code,
        name: line.material.name,
        class: line.class,
        rule: line.rule,
        supplier: line.offer.supplierName,
        listDate: line.offer.listDate,
        priceLineId: line.offer.id,
        leadDays: line.offer.leadDays ?? null,
        needed: add(`${key}/needed`, line.needed),
        used: add(`${key}/used`, line.used),
        bought: add(`${key}/bought`, line.bought),
        boughtCost: add(`${key}/bought-cost`, line.boughtCost),
        charged: add(`${key}/charged`, line.charged),
        offcutValue: add(`${key}/offcut-value`, line.offcutValue),
        loss: add(`${key}/loss`, line.loss),
      };
    }),
    work: column.work.map(({ operation, isOwner, hours: worked, labour, machine }) => ({
      id: operation.id,
      name: operation.name,
      grade: operation.grade,
      isOwner,
      machine: machine?.code ?? null,
      hours: add(`work/${operation.id}/hours`, worked),
      labour: add(`work/${operation.id}/labour`, labour),
      machineCost: maybe(`work/${operation.id}/machine`, machine?.cost ?? null),
    })),
  };
}
