import { type Figure, FigureTableBuilder } from '@scantling/figures';
import { type CostColumn, type CostSheetInput, costSheet } from '../cost-sheet/index.ts';
import type { ComparedColumn } from './compared-column.ts';

/** The first column of a sheet as comparisons read it, for tests. */
export function sampleColumn(input: CostSheetInput): ComparedColumn {
  const table = new FigureTableBuilder({ withDerivations: true });
  const [column] = costSheet(input).columns;
  if (column === undefined) throw new RangeError('a sheet has a column');
  const add = (name: string, figure: Figure): string => table.add(name, figure);
  const { classes, hours, price, materials, freightIn, work }: CostColumn = column;
  return {
    basis: input.basis,
    classes: {
      directMaterials: add('directMaterials', classes.directMaterials),
      boughtIn: add('boughtIn', classes.boughtIn),
      subcontract: add('subcontract', classes.subcontract),
      consumables: add('consumables', classes.consumables),
      directLabour: add('directLabour', classes.directLabour),
      machines: add('machines', classes.machines),
      costOfProduction: add('costOfProduction', classes.costOfProduction),
    },
    hours: {
      work: add('work', hours.work),
      machine: add('machine', hours.machine),
      owner: add('owner', hours.owner),
    },
    price: { netPrice: add('netPrice', price.netPrice) },
    materials: materials.map((line) => ({
      code: line.material.code,
      name: line.material.name,
      class: line.class,
      supplier: line.offer.supplierName,
      charged: add(`${line.material.code}/charged`, line.charged),
    })),
    freightIn: freightIn.map((line) => ({
      supplier: line.supplier.code,
      name: line.supplier.name,
      class: line.class,
      charged: add(`freight/${line.supplier.code}`, line.charged),
    })),
    work: work.map(({ operation, machine, ...line }) => ({
      id: operation.id,
      name: operation.name,
      grade: operation.grade,
      isOwner: line.isOwner,
      machine: machine?.code ?? null,
      hours: add(`${operation.id}/hours`, line.hours),
      machineHours: machine === null ? null : add(`${operation.id}/machine-hours`, machine.hours),
      labour: add(`${operation.id}/labour`, line.labour),
      machineCost: machine === null ? null : add(`${operation.id}/machine`, machine.cost),
    })),
    figures: table.table(),
  };
}
