import { getMaterialPrice } from '@scantling/contracts';
import { lineAt, needUnits, priceOfMaterial } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import { handle } from '../../handle.ts';
import { notFound } from '../../problems/request-problem.ts';
import { readWorkshop } from '../../shop/workshop-record.ts';
import { offersFor } from '../price-lists/offers.ts';
import { toCostingMaterial } from './costing-materials.ts';

export const answerGetMaterialPrice = handle(getMaterialPrice, async ({ params, query, services }) => {
  const { database, clock } = services;
  const [row, { currency }] = await Promise.all([
    database.material.findUnique({
      where: { id: params.id },
      include: { preferredSupplier: { select: { code: true } } },
    }),
    readWorkshop(database),
  ]);
  if (row === null) throw notFound('material');
  const onDate = query.onDate ?? clock().toISOString().slice(0, 10);
  const offers = await offersFor(database, [row.code], onDate, currency);
  const material = toCostingMaterial(row, offers.get(row.code) ?? []);
  const units = needUnits(material, onDate);
  const unit = query.unit ?? units[0] ?? 'each';
  const { needed, price } = priceOfMaterial(
    material,
    { quantity: query.quantity, unit },
    { onDate, currency },
  );
  // Where a break holds on from an older list, the price stands on that one.
  const line = price && lineAt(price.offer, price.bought.quantity.value);
  const table = new FigureTableBuilder({ withDerivations: query.working });
  return {
    onDate,
    currency,
    unit,
    units,
    needed: table.add('needed', needed),
    price: price &&
      line && {
        supplier: { code: price.offer.supplier, name: price.offer.supplierName },
        code: price.offer.code,
        unit: price.offer.unit,
        list: {
          id: line.listId ?? null,
          name: line.listName,
          date: line.listDate,
        },
        lineId: line.id,
        rule: price.rule,
        used: table.add('used', price.used),
        bought: table.add('bought', price.bought.quantity),
        cost: table.add('cost', price.bought.cost),
        unitCost: table.add('unit-cost', price.bought.unitCost),
      },
    figures: table.table(),
  };
});
