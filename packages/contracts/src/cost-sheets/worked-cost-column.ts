import { type CostColumn, lineAt } from '@scantling/costing';
import type { Figure, FigureTableBuilder } from '@scantling/figures';
import { z } from 'zod';
import { figureId } from '../figures.ts';
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

const MATERIAL_CLASSES = ['direct-materials', 'bought-in', 'subcontract', 'consumables'] as const;

const materialLineSchema = z.strictObject({
  code: z.string(),
  name: z.string(),
  class: z.enum(MATERIAL_CLASSES),
  /** Why this price was taken. */
  rule: z.string(),
  supplier: z.string(),
  listDate: calendarDate,
  priceLineId: z.string(),
  priceListId: z.string().nullable(),
  leadDays: z.number().int().nullable(),
  needed: figureId,
  used: figureId,
  bought: figureId,
  boughtCost: figureId,
  charged: figureId,
  offcutValue: figureId,
  loss: figureId,
});

/** Carriage of a supplier's order to the workshop. */
const freightLineSchema = z.strictObject({
  supplier: z.string(),
  name: z.string(),
  class: z.enum(MATERIAL_CLASSES),
  /** Why it is charged so. */
  rule: z.string(),
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
  machineHours: figureId.nullable(),
  /** Glue and drying, in which nobody works. */
  elapsed: figureId,
  labour: figureId,
  machineCost: figureId.nullable(),
});

/** The sheet at one number of pieces. */
export const columnSchema = z.strictObject({
  quantity: z.number().int(),
  materials: z.array(materialLineSchema),
  freightIn: z.array(freightLineSchema),
  /** Materials without a price: cost and price leave them out. */
  unpriced: z.array(
    z.strictObject({
      code: z.string(),
      name: z.string(),
      field: z.string(),
      why: z.string(),
      needed: figureId,
    }),
  ),
  work: z.array(workLineSchema),
  hours: z.strictObject({ work: figureId, machine: figureId, elapsed: figureId, owner: figureId }),
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

/** Puts a column's figures into the table and answers their ids. */
export function toColumn(column: CostColumn, table: FigureTableBuilder): z.output<typeof columnSchema> {
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
      elapsed: add('hours/elapsed', hours.elapsed),
      owner: add('hours/owner', hours.owner),
    },
    materials: column.materials.map((line) => {
      const key = `${line.class}/${line.material.code}`;
      const priced = lineAt(line.offer, line.bought.value);
      return {
        code: line.material.code,
        name: line.material.name,
        class: line.class,
        rule: line.rule,
        supplier: line.offer.supplierName,
        listDate: priced.listDate,
        priceLineId: priced.id,
        priceListId: priced.listId ?? null,
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
    freightIn: column.freightIn.map((line) => {
      const key = `freight/${line.supplier.code}`;
      return {
        supplier: line.supplier.code,
        name: line.supplier.name,
        class: line.class,
        rule: line.rule,
        boughtCost: add(`${key}/bought-cost`, line.boughtCost),
        charged: add(`${key}/charged`, line.charged),
        offcutValue: add(`${key}/offcut-value`, line.offcutValue),
        loss: add(`${key}/loss`, line.loss),
      };
    }),
    unpriced: column.unpriced.map(({ material, field, why, needed }) => ({
      code: material.code,
      name: material.name,
      field,
      why,
      needed: add(`unpriced/${material.code}/needed`, needed),
    })),
    work: column.work.map(({ operation, isOwner, hours: worked, elapsed, labour, machine }) => ({
      id: operation.id,
      name: operation.name,
      grade: operation.grade,
      isOwner,
      machine: machine?.code ?? null,
      hours: add(`work/${operation.id}/hours`, worked),
      machineHours: maybe(`work/${operation.id}/machine-hours`, machine?.hours ?? null),
      elapsed: add(`work/${operation.id}/elapsed`, elapsed),
      labour: add(`work/${operation.id}/labour`, labour),
      machineCost: maybe(`work/${operation.id}/machine`, machine?.cost ?? null),
    })),
  };
}
