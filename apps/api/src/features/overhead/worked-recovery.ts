import { type AnswerOf, type getOverheadRecovery, toWorkedOverheadRate } from '@scantling/contracts';
import { type HomeLine, overheadRate } from '@scantling/costing';
import { FigureTableBuilder } from '@scantling/figures';
import type { Services } from '../../services.ts';
import { readShop } from '../../shop/read-shop.ts';

/** The rates of both pools, and where each yearly amount comes back. @throws CostingInputError */
export async function workedRecovery(
  { database, clock }: Services,
  options: { withDerivations: boolean },
): Promise<AnswerOf<typeof getOverheadRecovery>> {
  const today = clock().toISOString().slice(0, 10);
  const { workshop, overhead, lostEnquiries } = await readShop(database, today);
  const context = { currency: workshop.currency };
  const table = new FigureTableBuilder(options);
  const { proof } = overhead;
  const home = (name: keyof typeof proof.homes) => table.add(`homes/${name}`, proof.homes[name]);
  return {
    pools: [overhead.workshop, overhead.administration].map((pool) =>
      toWorkedOverheadRate(overheadRate(pool, context), table),
    ),
    proof: {
      holds: proof.holds,
      total: table.add('total', proof.total),
      rest: table.add('rest', proof.rest),
      homes: {
        'machine-rate': home('machine-rate'),
        'labour-rate': home('labour-rate'),
        'workshop-pool': home('workshop-pool'),
        'administration-pool': home('administration-pool'),
      },
      lines: proof.lines.map((line) => toLine(line, table)),
      findings: [...proof.findings],
    },
    lostEnquiries:
      lostEnquiries === null
        ? null
        : {
            home: workshop.settings.lostEnquiryHours,
            hours: table.add('lost-enquiries/hours', lostEnquiries.hours),
            perYear: table.add('lost-enquiries/per-year', lostEnquiries.perYear),
          },
    figures: table.table(),
  };
}

function toLine(line: HomeLine, table: FigureTableBuilder) {
  const id = (part: string) => `lines/${line.id}/${part}`;
  return {
    id: line.id,
    name: line.name,
    home: line.home,
    amount: table.add(id('amount'), line.amount),
    byMachineRates: table.add(id('by-machine-rates'), line.byMachineRates),
    byLabourRates: table.add(id('by-labour-rates'), line.byLabourRates),
    inPool: table.add(id('in-pool'), line.inPool),
    nowhere: table.add(id('nowhere'), line.nowhere),
  };
}
