import { difference, type Figure, named, scale, share, sum } from '@scantling/figures';
import { type SupplierTerms, termAtCost } from '../price-list/index.ts';
import type { MaterialLine } from './material-lines.ts';
import type { MaterialClass } from './material-use.ts';
import type { SheetContext } from './sheet-context.ts';

/** Carriage of one order of a supplier to the workshop, and who pays it. */
export interface FreightLine {
  readonly supplier: SupplierTerms;
  readonly class: MaterialClass;
  /** Why it is charged so. */
  readonly rule: string;
  readonly boughtCost: Figure<'money'>;
  /** What the piece pays. charged + offcut + loss = bought, always. */
  readonly charged: Figure<'money'>;
  readonly offcutValue: Figure<'money'>;
  readonly loss: Figure<'money'>;
}

const CLASSES: readonly MaterialClass[] = ['direct-materials', 'bought-in', 'consumables', 'subcontract'];

/** The lines of one supplier's order. */
export interface SupplierOrder {
  readonly supplier: SupplierTerms;
  readonly lines: readonly MaterialLine[];
  /** What the goods cost. */
  readonly cost: Figure<'money'>;
}

/** What is bought of each supplier that states terms, as one order each. */
export function supplierOrders(materials: readonly MaterialLine[], sheet: SheetContext): SupplierOrder[] {
  const { suppliers = [], currency } = sheet.input;
  return suppliers.flatMap((supplier) => {
    const lines = materials.filter((line) => line.offer.supplier === supplier.code);
    const costs = lines.map((line) => line.boughtCost);
    const cost = sum(`${supplier.name}: goods of the order`, 'money', costs, currency);
    return cost.value.isZero() ? [] : [{ supplier, lines, cost }];
  });
}

/**
 * Carriage inwards, once for each supplier and batch. It is a cost of purchase (IAS 2, paragraph 11, from memory) and
 * stands in the class of the goods it brings: direct materials before bought-in, consumables and services. On the
 * commission basis the client pays the whole order; on the shop basis the piece pays by the share of the goods that it
 * uses, and the rest follows the leftovers to stock or to loss.
 */
export function freightLines(orders: readonly SupplierOrder[], sheet: SheetContext): FreightLine[] {
  return orders.flatMap((order) => {
    const freight = termAtCost(order.supplier, 'freightPerOrder');
    return freight === null ? [] : [freightLine(order, freight, sheet)];
  });
}

function freightLine(order: SupplierOrder, freight: Figure<'money'>, sheet: SheetContext): FreightLine {
  const { supplier, lines, cost } = order;
  const label = `${supplier.name}: freight of one order`;
  const classOf = CLASSES.find((one) => lines.some((line) => line.class === one)) ?? 'direct-materials';
  const line = { supplier, class: classOf, boughtCost: freight };
  const all = (what: string, figures: readonly Figure<'money'>[]) => sum(what, 'money', figures);
  if (sheet.input.basis === 'commission') {
    const charged = named(`${label}, charged`, freight);
    const none = difference(`${label}: nothing left`, freight, charged);
    const rule = 'one order for this client, charged whole';
    return { ...line, rule, charged, offcutValue: none, loss: none };
  }
  const used = all(
    'goods used',
    lines.map((one) => one.usedCost),
  );
  const usedShare = share(`${supplier.name}: share of the goods that is used`, used, cost);
  const charged = scale(`${label}, charged`, freight, usedShare);
  const rest = difference(`${label}, on what is left over`, freight, charged);
  const toStock = all(
    'leftovers to stock',
    lines.map((one) => one.offcutValue),
  );
  const left = all('leftovers at cost', [...lines.map((one) => one.loss), toStock]);
  const offcutValue = left.value.isZero()
    ? rest
    : scale(`${label}, to stock`, rest, share('leftovers worth keeping', toStock, left));
  return {
    ...line,
    rule: 'by the share of the goods that the pieces use; the rest follows the leftovers',
    charged,
    offcutValue,
    loss: difference(`${label}, lost`, rest, offcutValue),
  };
}
