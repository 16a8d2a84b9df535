import type { Workshop, WorkshopSettings } from '@scantling/contracts';
import {
  HOMES,
  type HomedAmount,
  type OneHome,
  type OverheadPool,
  type OverheadPoolKind,
  oneHome,
  type RecoveredByRates,
} from '@scantling/costing';
import { ZERO } from '@scantling/decimals';
import { difference, type Figure } from '@scantling/figures';
import type { Prisma } from '../generated/prisma/client.ts';

/** Every yearly amount of the shop with its home, by name. */
export async function readHomedAmounts(database: Prisma.TransactionClient): Promise<HomedAmount[]> {
  const rows = await database.overheadAmount.findMany({ orderBy: [{ name: 'asc' }, { id: 'asc' }] });
  return rows.map((row) => ({
    id: row.id,
    name: row.name,
    yearlyAmount: row.yearlyAmount.toFixed(),
    home: HOMES.find((home) => home === row.home) ?? 'workshop-pool',
    ...(row.recoveredAs === null ? {} : { recoveredAs: row.recoveredAs }),
  }));
}

/** The id of the amount that hours on lost enquiries are in the administration pool. */
export const LOST_ENQUIRIES = 'lost-enquiries';

/**
 * Gives hours on lost enquiries their one home in the administration pool: they are paid hours, so they are taken off
 * the amount that labour rates recover and off what those recover of it.
 */
export function withLostEnquiries(
  amounts: readonly HomedAmount[],
  recovered: readonly RecoveredByRates[],
  lost: Figure<'money/year'>,
): { readonly amounts: readonly HomedAmount[]; readonly recovered: readonly RecoveredByRates[] } {
  const own: HomedAmount = {
    id: LOST_ENQUIRIES,
    name: 'Hours on lost enquiries',
    yearlyAmount: lost.value,
    home: 'administration-pool',
    worked: lost,
  };
  const pay = amounts.findIndex((amount) => amount.recoveredAs === PAY);
  return {
    amounts: [...amounts.map((amount, at) => (at === pay ? { ...amount, less: lost } : amount)), own],
    recovered: recovered.map((one) =>
      one.recoveredAs === PAY && one.by === 'labour-rate'
        ? { ...one, perYear: difference(`${one.perYear.label}, without lost enquiries`, one.perYear, lost) }
        : one,
    ),
  };
}

/** The name under which labour rates recover pay and burden. */
const PAY = 'pay';

const NAMES = { workshop: 'Workshop overhead', administration: 'Administration overhead' } as const;

function poolOf(
  kind: OverheadPoolKind,
  amounts: readonly HomedAmount[],
  proof: OneHome,
  settings: WorkshopSettings,
): OverheadPool {
  const home = `${kind}-pool` as const;
  const own = amounts.filter((amount) => amount.home === home);
  // An amount that rates recover more of than it costs leaves nothing to a pool, not less than nothing.
  const recovered = proof.lines
    .filter((line) => line.home === home)
    .reduce((all, line) => all.plus(line.amount.value.minus(line.inPool.value)), ZERO);
  const { base, plannedBase, actual } =
    kind === 'workshop' ? settings.workshopOverhead : settings.administrationOverhead;
  return {
    id: kind,
    name: NAMES[kind],
    kind,
    amounts: own.map(({ id, name, yearlyAmount }) => ({ id, name, yearlyAmount })),
    ...(recovered.isZero() ? {} : { recoveredByRates: recovered }),
    base,
    plannedBase,
    ...(actual === null ? {} : { actual }),
  };
}

export interface OverheadOfTheShop {
  readonly proof: OneHome;
  readonly workshop: OverheadPool;
  readonly administration: OverheadPool;
}

/** Both pools, net of what rates recover, with the proof that each amount has one home. @throws CostingInputError */
export function overheadOfTheShop(
  { currency, settings }: Workshop,
  amounts: readonly HomedAmount[],
  recovered: readonly RecoveredByRates[],
): OverheadOfTheShop {
  const proof = oneHome(amounts, recovered, { currency });
  return {
    proof,
    workshop: poolOf('workshop', amounts, proof, settings),
    administration: poolOf('administration', amounts, proof, settings),
  };
}
