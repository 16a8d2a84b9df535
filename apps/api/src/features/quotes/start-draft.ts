import type { Workshop } from '@scantling/contracts';
import { decimal, ONE } from '@scantling/decimals';
import type { DraftPart, QuoteDraft } from '@scantling/quoting';

/** Deposits as the workshop asks for them, the first on acceptance, and the rest on delivery. */
function startingSchedule({ depositShares }: Workshop['settings']['quoting']): DraftPart[] {
  const rest = depositShares.reduce((left, { share }) => left.minus(decimal(share)), ONE);
  const deposits = depositShares.map(({ label, share }, at): DraftPart => {
    const due = at === 0 ? 'on-acceptance' : 'during-work';
    return { id: `part-${at + 1}`, label, share, due };
  });
  if (rest.lte(0)) return deposits;
  return [...deposits, { id: 'rest', label: 'On delivery', share: rest.toString(), due: 'on-delivery' }];
}

/** What a new quote starts with. */
export function startDraft(workshop: Workshop): QuoteDraft {
  const { quoting } = workshop.settings;
  return {
    intro: '',
    currency: workshop.currency,
    priceMode: quoting.priceMode,
    taxes: quoting.taxCategories,
    lines: [],
    discount: null,
    schedule: startingSchedule(quoting),
    promisedOn: null,
    validDays: quoting.validityDays,
    terms: quoting.terms,
    pictures: [],
  };
}

/** What an addition starts with: taxes, price mode and terms of the quote it adds to, and no lines. */
export function startAddition(original: QuoteDraft): QuoteDraft {
  return { ...original, intro: '', lines: [], discount: null, pictures: [], promisedOn: null };
}
