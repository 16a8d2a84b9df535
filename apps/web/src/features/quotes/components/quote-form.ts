import type { QuoteDraft } from '@scantling/quoting';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import type { FieldError } from '../../../lib/api-problem.ts';
import { fromPercent, optionalDecimal, plainDecimal, toPercent } from '../../../lib/percent.ts';
import type { Revision } from '../api/get-quote.ts';
import type { QuoteBody } from '../api/quote-acts.ts';

type DraftLine = QuoteDraft['lines'][number];
export type Pictures = QuoteDraft['pictures'];

/** A line as it stands in its fields: what is typed stays text, readable or not. */
export interface LineForm {
  readonly id: string;
  readonly kind: DraftLine['kind'];
  readonly description: string;
  readonly details: string;
  readonly tax: string;
  readonly choice: DraftLine['choice']['kind'];
  readonly group: string;
  readonly isStandard: boolean;
  readonly pictures: Pictures;
  readonly costSheetId: string | null;
  readonly pieces: string;
  readonly quantity: string;
  readonly unit: string;
  readonly price: string;
  readonly cost: string;
}

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

const freshId = (): string => newIdempotencyKey().slice(0, 12);

const EMPTY_LINE = {
  description: '',
  details: '',
  choice: 'included',
  group: '',
  isStandard: false,
  pictures: [],
  costSheetId: null,
  pieces: '1',
  quantity: '1',
  unit: '',
  price: '',
  cost: '',
} as const;

/** A new line of a kind, under the first tax. */
export function freshLine(kind: LineForm['kind'], form: QuoteForm): LineForm {
  const description = kind === 'delivery' ? 'Delivery' : '';
  return { ...EMPTY_LINE, id: freshId(), kind, description, tax: form.taxes[0]?.id ?? '' };
}

export function freshPart(): PartForm {
  return { id: freshId(), label: '', share: '', due: 'during-work' };
}

function lineForm(line: DraftLine): LineForm {
  const { id, kind, description, details, tax, choice, pictures } = line;
  return {
    ...EMPTY_LINE,
    id,
    kind,
    description,
    details,
    tax,
    pictures,
    choice: choice.kind,
    ...(choice.kind === 'alternate' ? { group: choice.group, isStandard: choice.isStandard } : {}),
    ...(line.kind === 'cost-sheet'
      ? { costSheetId: line.costSheetId, pieces: String(line.pieces) }
      : { price: line.price, cost: line.cost ?? '' }),
    ...(line.kind === 'free' ? { quantity: line.quantity, unit: line.unit } : {}),
  };
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

function choiceOf({ choice, group, isStandard }: LineForm): DraftLine['choice'] {
  return choice === 'alternate' ? { kind: 'alternate', group, isStandard } : { kind: choice };
}

function draftLine(line: LineForm): DraftLine {
  const { id, description, details, tax, pictures, kind } = line;
  const common = { id, description, details, tax, pictures, choice: choiceOf(line) };
  if (kind === 'cost-sheet')
    return { ...common, kind, costSheetId: line.costSheetId ?? '', pieces: Number(line.pieces) };
  const priced = { ...common, price: plainDecimal(line.price), cost: optionalDecimal(line.cost) };
  if (kind === 'delivery') return { ...priced, kind };
  return { ...priced, kind, quantity: plainDecimal(line.quantity), unit: line.unit };
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

/** What the server could not even be asked: whole numbers that are none, and lines without their sheet. */
export function formProblems({ lines, validDays }: QuoteForm): readonly FieldError[] {
  const wrong: FieldError[] = lines.flatMap((line, at): FieldError[] => {
    if (line.kind !== 'cost-sheet') return [];
    if (line.costSheetId === null)
      return [
        {
          field: `lines.${at}.costSheetId`,
          message: 'is not chosen',
          mend: 'Choose one of the cost sheets.',
        },
      ];
    if (WHOLE.test(line.pieces)) return [];
    return [
      {
        field: `lines.${at}.pieces`,
        message: `"${line.pieces}" is no whole number of pieces.`,
        mend: 'Enter a number from 1 to 2000.',
      },
    ];
  });
  if (!WHOLE.test(validDays))
    wrong.push({
      field: 'validDays',
      message: `"${validDays}" is no whole number of days.`,
      mend: 'Enter a number from 1 to 365.',
    });
  return wrong;
}

/** The lines with one moved to another place; the list as it was where that cannot be. */
export function movedLines<Item>(items: readonly Item[], from: number, to: number): readonly Item[] {
  const item = items[from];
  if (item === undefined || to < 0 || to >= items.length || from === to) return items;
  const others = items.filter((_, at) => at !== from);
  return [...others.slice(0, to), item, ...others.slice(to)];
}
