import { type Figure, SHARE_BOUNDS, scale, sum } from '@scantling/figures';
import { overheadCharge, overheadRate } from '../overhead/index.ts';
import type { FreightLine } from './freight-lines.ts';
import type { MaterialLine } from './material-lines.ts';
import type { MaterialClass } from './material-use.ts';
import type { SheetContext } from './sheet-context.ts';
import type { WorkLine } from './work-lines.ts';

/** The classes of a cost sheet, in their order: prime cost, works cost, cost of production. */
export interface CostClasses {
  readonly directMaterials: Figure<'money'>;
  readonly boughtIn: Figure<'money'>;
  readonly directLabour: Figure<'money'>;
  readonly subcontract: Figure<'money'>;
  readonly primeCost: Figure<'money'>;
  readonly machines: Figure<'money'>;
  readonly consumables: Figure<'money'>;
  readonly workshopOverhead: Figure<'money'>;
  readonly worksCost: Figure<'money'>;
  readonly administrationOverhead: Figure<'money'>;
  readonly freight: Figure<'money'>;
  readonly contingency: Figure<'money'>;
  readonly costOfProduction: Figure<'money'>;
}

export interface Hours {
  /** All hands, in the operations. */
  readonly work: Figure<'h'>;
  readonly machine: Figure<'h'>;
  /** Glue and drying, one after the other, in which nobody works and no machine runs. */
  readonly elapsed: Figure<'h'>;
  /** The owner's, with quoting, buying and delivery. */
  readonly owner: Figure<'h'>;
}

export function hoursOfWork(work: readonly WorkLine[], sheet: SheetContext): Hours {
  const { terms } = sheet.input;
  const office = (key: string, label: string, value: string) => sheet.fromTerms(key, label, 'h', value);
  return {
    work: sum(
      'hours of work',
      'h',
      work.map((line) => line.hours),
    ),
    machine: sum(
      'machine hours',
      'h',
      work.flatMap((line) => (line.machine === null ? [] : [line.machine.hours])),
    ),
    elapsed: sum(
      'elapsed hours of glue and drying',
      'h',
      work.map((line) => line.elapsed),
    ),
    owner: sum("owner's hours", 'h', [
      ...work.filter((line) => line.isOwner).map((line) => line.hours),
      office('quoting-hours', 'quoting', terms.quotingHours),
      office('buying-hours', 'buying', terms.buyingHours),
      office('delivery-hours', 'delivery', terms.deliveryHours),
    ]),
  };
}

/** Adds the lines up class by class. */
export function costClasses(
  materials: readonly (MaterialLine | FreightLine)[],
  work: readonly WorkLine[],
  hours: Hours,
  sheet: SheetContext,
): CostClasses {
  const { currency, rates, terms } = sheet.input;
  const money = (label: string, figures: readonly Figure<'money'>[]) =>
    sum(label, 'money', figures, currency);
  const ofClass = (label: string, wanted: MaterialClass) =>
    money(
      label,
      materials.filter((line) => line.class === wanted).map((line) => line.charged),
    );
  const directMaterials = ofClass('direct materials', 'direct-materials');
  const boughtIn = ofClass('bought-in components', 'bought-in');
  const subcontract = ofClass('subcontract', 'subcontract');
  const consumables = ofClass('consumables', 'consumables');
  const directLabour = money(
    'direct labour',
    work.map((line) => line.labour),
  );
  const machines = money(
    'machines',
    work.flatMap((line) => (line.machine === null ? [] : [line.machine.cost])),
  );
  const primeCost = money('prime cost', [directMaterials, boughtIn, directLabour, subcontract]);
  const charge = (label: string, pool: (typeof rates)['workshopOverhead']) => {
    const bases = {
      'productive-hours': hours.work,
      'machine-hours': hours.machine,
      'labour-cost': directLabour,
      'prime-cost': primeCost,
    };
    return overheadCharge(label, overheadRate(pool, { currency }), bases[pool.base], terms.overheadAt);
  };
  const workshopOverhead = charge('workshop overhead', rates.workshopOverhead);
  const worksCost = money('works cost', [primeCost, machines, consumables, workshopOverhead]);
  const administrationOverhead = charge('administration overhead', rates.administrationOverhead);
  const share = sheet.fromTerms(
    'contingency',
    'contingency, share of works cost and administration',
    'ratio',
    terms.contingency,
    SHARE_BOUNDS,
  );
  const contingency = scale(
    'contingency',
    money('works cost and administration', [worksCost, administrationOverhead]),
    share,
  );
  const freight = sheet.fromTerms('freight', 'freight to the client', 'money', terms.freight);
  return {
    directMaterials,
    boughtIn,
    directLabour,
    subcontract,
    primeCost,
    machines,
    consumables,
    workshopOverhead,
    worksCost,
    administrationOverhead,
    freight,
    contingency,
    costOfProduction: money('cost of production', [worksCost, administrationOverhead, freight, contingency]),
  };
}
