import type { DecimalLike } from '@scantling/decimals';
import { entered, type Figure, sum } from '@scantling/figures';
import { CostingInputError } from '../input-error.ts';
import { type CostingContext, LeafReader } from '../leaf-reader.ts';

/** One part of what it took to get an asset working: price, freight, installation, tax not recovered. */
export interface AcquisitionPart {
  readonly id: string;
  readonly name: string;
  readonly amount: DecimalLike;
}

/** What an asset cost: all it took to get it working. @throws CostingInputError */
export function acquisitionCost(parts: readonly AcquisitionPart[], context: CostingContext): Figure<'money'> {
  if (parts.length === 0)
    throw new CostingInputError('parts', 'is empty', 'enter at least what was paid for the asset');
  const reader = new LeafReader({
    keyPrefix: context.keyPrefix ?? 'acquisition',
    currency: context.currency,
    source: context.source ?? entered(),
    subject: '',
  });
  return sum(
    'cost, ready for use',
    'money',
    parts.map((part, index) =>
      reader
        .inside(`parts.${index}`, part.id, part.name)
        .read('amount', part.amount, { label: 'amount', unit: 'money', from: 0 }),
    ),
  );
}
