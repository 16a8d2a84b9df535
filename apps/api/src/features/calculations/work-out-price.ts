import type { AnswerOf, price } from '@scantling/contracts';
import { price as priceOf } from '@scantling/costing';
import { entered, type Figure, FigureTableBuilder, input } from '@scantling/figures';
import type { z } from 'zod';

/** A price from cost alone, with its derivations. @throws CostingInputError */
export function workOutPrice(body: z.output<typeof price.body>): AnswerOf<typeof price> {
  const { currency, terms, ownerHours, pieces } = body;
  const source = entered();
  const money = (
    key: 'costOfProduction' | 'materials' | 'labour' | 'machines' | 'ownerLabour' | 'avoidable',
    label: string,
  ) => input({ key, label, unit: 'money', value: body[key], currency, source });
  const worked = priceOf(
    {
      ...(pieces === undefined
        ? {}
        : { pieces: input({ key: 'pieces', label: 'pieces', unit: 'ratio', value: pieces, source }) }),
      costOfProduction: money('costOfProduction', 'cost of production'),
      materials: money('materials', 'materials, bought-in and subcontract'),
      labour: money('labour', 'labour'),
      machines: money('machines', 'machines'),
      ownerLabour: money('ownerLabour', "the owner's labour"),
      ownerHours: input({
        key: 'ownerHours',
        label: "the owner's hours",
        unit: 'h',
        value: ownerHours,
        source,
      }),
      avoidable: money('avoidable', "avoidable cost, without the owner's hours"),
    },
    terms,
    { currency, source },
  );
  const table = new FigureTableBuilder({ withDerivations: true });
  const maybe = (name: string, figure: Figure | null) => (figure === null ? null : table.add(name, figure));
  return {
    listPrice: table.add('list-price', worked.listPrice),
    netPrice: table.add('net-price', worked.netPrice),
    profit: table.add('profit', worked.profit),
    margin: maybe('margin', worked.margin),
    markup: maybe('markup', worked.markup),
    hourlyEarnings: maybe('hourly-earnings', worked.hourlyEarnings),
    floorPrice: table.add('floor-price', worked.floorPrice),
    figures: table.table(),
  };
}
