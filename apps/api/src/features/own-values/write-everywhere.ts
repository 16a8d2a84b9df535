import type { Currency } from '@scantling/money';
import type { Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import type { CostSheetAnswer } from '../cost-sheets/cost-sheet-records.ts';
import type { AskedChange } from './asked-changes.ts';
import { writeDesign } from './write-design.ts';
import { type PriceOrigin, writeExchangeRate, writePrices } from './write-prices.ts';
import { type WrittenPlace, writeOverheadAmount, writeRecord, writeWorkshop } from './write-records.ts';

type Access = Prisma.TransactionClient;

interface Writing {
  readonly sheet: CostSheetAnswer;
  readonly currency: Currency;
  readonly origin: PriceOrigin;
  /** Id of who makes a revision of the design. */
  readonly actorId: string;
}

/** Changes of one record are written together, so that it moves by one version. */
function recordOf({ home, leaf }: AskedChange): string {
  switch (home.kind) {
    case 'design':
    case 'design-parameter':
      return 'design';
    case 'labour-grade':
    case 'tool':
    case 'material':
    case 'supplier':
      return `${home.kind}:${home.code}`;
    case 'workshop':
    case 'price':
      return home.kind;
    default:
      return leaf.id;
  }
}

async function writeGroup(
  transaction: Access,
  group: readonly AskedChange[],
  { sheet, currency, origin, actorId }: Writing,
): Promise<readonly WrittenPlace[]> {
  const [first] = group;
  if (first === undefined) return [];
  const { home, value, field } = first;
  const values = group.flatMap((one) =>
    'path' in one.home ? [{ path: one.home.path, value: one.value, field: one.field }] : [],
  );
  const forAll = (place: WrittenPlace) => group.map(() => place);
  switch (home.kind) {
    case 'design':
    case 'design-parameter': {
      const drawn = group.flatMap((one) =>
        one.home.kind === 'design' || one.home.kind === 'design-parameter'
          ? [{ home: one.home, value: one.value, field: one.field }]
          : [],
      );
      return forAll(await writeDesign(transaction, sheet, drawn, actorId));
    }
    case 'labour-grade':
    case 'tool':
    case 'material':
    case 'supplier':
      return forAll(await writeRecord(transaction, home, values));
    case 'workshop':
      return forAll(await writeWorkshop(transaction, values));
    case 'overhead-amount':
      return forAll(
        await writeOverheadAmount(transaction, home.id, { path: ['yearlyAmount'], value, field }),
      );
    case 'price':
      return writePrices(transaction, group, origin);
    case 'exchange-rate':
      return forAll(
        await writeExchangeRate(transaction, { from: home.from, to: currency, value, field }, origin),
      );
    default:
      throw fieldProblem(first.reachField, 'is kept nowhere else', 'Enter it for this sheet only.');
  }
}

/** Changes the records behind the leaves, each by its own rules. @throws RequestProblem input-invalid and what the records' own code throws */
export async function writeEverywhere(
  transaction: Access,
  changes: readonly AskedChange[],
  writing: Writing,
): Promise<ReadonlyMap<AskedChange, WrittenPlace>> {
  const groups = new Map<string, AskedChange[]>();
  for (const change of changes) {
    const record = recordOf(change);
    groups.set(record, [...(groups.get(record) ?? []), change]);
  }
  const places = new Map<AskedChange, WrittenPlace>();
  for (const group of groups.values()) {
    const written = await writeGroup(transaction, group, writing);
    group.forEach((change, at) => {
      const place = written[at];
      if (place !== undefined) places.set(change, place);
    });
  }
  return places;
}
