import type { QuoteDraft } from '@scantling/quoting';
import type { Choice } from '../../../components/choice-list.tsx';
import type { FieldError } from '../../../lib/api-problem.ts';
import { fromPercent, plainDecimal, toPercent } from '../../../lib/percent.ts';
import type { Revision } from '../api/get-quote.ts';
import type { QuoteBody } from '../api/quote-acts.ts';
import { draftLine, freshId, type LineForm, lineForm, type Pictures } from './line-cells.ts';
import { type LineErrors, lineErrors, lineProblems } from './line-problems.ts';

export interface PartForm {
  readonly id: string;
  readonly label: string;
  /** In percent. */
  readonly share: string;
  readonly due: QuoteDraft['schedule'][number]['due'];
}

/** A draft as it stands on the screen. */
export interface QuoteForm {
  readonly title: string;
  readonly clientId: string;
  readonly enquiryId: string | null;
  readonly intro: string;
  readonly currency: QuoteDraft['currency'];
  readonly priceMode: QuoteDraft['priceMode'];
  readonly taxes: QuoteDraft['taxes'];
  readonly lines: readonly LineForm[];
  readonly discountKind: 'none' | 'share' | 'amount';
  readonly discount: string;
  readonly schedule: readonly PartForm[];
  readonly promisedOn: string;
  readonly validDays: string;
  readonly terms: string;
  readonly pictures: Pictures;
}

export function freshPart(): PartForm {
  return { id: freshId(), label: '', share: '', due: 'during-work' };
}

export function quoteForm(revision: Revision): QuoteForm {
  const { title, clientId, enquiryId, draft } = revision;
  const { discount } = draft;
  return {
    title,
    clientId,
    enquiryId,
    intro: draft.intro,
    currency: draft.currency,
    priceMode: draft.priceMode,
    taxes: draft.taxes,
    lines: draft.lines.map(lineForm),
    discountKind: discount?.kind ?? 'none',
    discount:
      discount === null ? '' : discount.kind === 'share' ? toPercent(discount.share) : discount.amount,
    schedule: draft.schedule.map((part) => ({ ...part, share: toPercent(part.share) })),
    promisedOn: draft.promisedOn ?? '',
    validDays: String(draft.validDays),
    terms: draft.terms,
    pictures: draft.pictures,
  };
}

function discountOf({ discountKind, discount }: QuoteForm): QuoteDraft['discount'] {
  if (discountKind === 'none') return null;
  if (discountKind === 'share') return { kind: 'share', share: fromPercent(discount) };
  return { kind: 'amount', amount: plainDecimal(discount) };
}

/** The draft the fields say; what cannot be read goes to the server as it is, to be named there. */
export function draftOf(form: QuoteForm): QuoteDraft {
  const { intro, currency, priceMode, taxes, terms, pictures } = form;
  return {
    intro,
    currency,
    priceMode,
    taxes,
    lines: form.lines.map(draftLine),
    discount: discountOf(form),
    schedule: form.schedule.map((part) => ({ ...part, share: fromPercent(part.share) })),
    promisedOn: form.promisedOn === '' ? null : form.promisedOn,
    validDays: Number(form.validDays),
    terms,
    pictures,
  };
}

export function bodyOf(form: QuoteForm): QuoteBody {
  const { title, clientId, enquiryId } = form;
  // The contract's type of a draft is the pure package's, whose lists cannot be written to.
  return { title, clientId, enquiryId, draft: draftOf(form) };
}

const WHOLE = /^\d+$/;

/** What the server need not be asked about: cells of lines, and a number of days that is none. */
export function formProblems(
  { lines, taxes, validDays }: QuoteForm,
  sheets: readonly Choice[] | undefined,
): { readonly lines: LineErrors; readonly fields: readonly FieldError[] } {
  const ofLines = lines.flatMap((line) =>
    lineProblems(line, { taxes, sheets }).map(([name, message]) => [line.key, name, message] as const),
  );
  const fields = WHOLE.test(validDays)
    ? []
    : [
        {
          field: 'validDays',
          message: `"${validDays}" is no whole number of days.`,
          mend: 'Enter a number from 1 to 365.',
        },
      ];
  return { lines: lineErrors(ofLines), fields };
}
