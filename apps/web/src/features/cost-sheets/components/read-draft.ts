import type { PricePolicy } from '@scantling/costing';
import type { FieldError } from '../../../lib/api-problem.ts';
import { fromPercent, plainDecimal } from '../../../lib/percent.ts';
import type { CostSheetBody } from '../api/create-cost-sheet.ts';
import type { SheetDraft } from './sheet-draft.ts';

export type ReadDraft =
  | { readonly body: CostSheetBody; readonly errors: readonly [] }
  | { readonly body: null; readonly errors: readonly FieldError[] };

const NUMBER = /^\d{1,24}(?:\.\d{1,18})?$/;

/** Reads what was typed; errors name fields as the API does, so that both land on the same control. */
export function readDraft(draft: SheetDraft): ReadDraft {
  const errors: FieldError[] = [];
  const complain = (field: string, message: string, mend: string): string => {
    errors.push({ field, message, mend });
    return '0';
  };
  const read = (field: string, typed: string, text: string): string =>
    NUMBER.test(text)
      ? text
      : complain(field, `"${typed}" is no number of 0 or more.`, 'Write digits and a point, such as 12.5.');
  const amount = (field: string, typed: string): string => read(field, typed, plainDecimal(typed));
  const percent = (field: string, typed: string): string => read(field, typed, fromPercent(typed));
  const quantities = draft.quantities.split(/[\s,;]+/).filter((text) => text !== '');
  if (quantities.length === 0 || quantities.some((text) => !/^[1-9]\d{0,5}$/.test(text))) {
    complain(
      'quantities',
      'Each quantity is a whole number from 1.',
      'Write the numbers with commas between them: 1, 2, 5.',
    );
  }
  if (draft.title.trim() === '') complain('title', 'There is no title.', 'Say what the sheet is for.');
  if (draft.designId === null)
    complain('designId', 'There is no design.', 'Choose the design that is costed.');
  const step = draft.stepTo.trim();
  const body: CostSheetBody = {
    title: draft.title.trim(),
    designId: draft.designId ?? '',
    clientId: draft.clientId,
    basis: draft.basis,
    onDate: draft.onDate === '' ? null : draft.onDate,
    quantities: quantities.map(Number),
    terms: {
      ...(draft.promisedDate === '' ? {} : { promisedDate: draft.promisedDate }),
      overheadAt: draft.overheadAt,
      freight: amount('terms.freight', draft.freight),
      contingency: percent('terms.contingency', draft.contingency),
      quotingHours: amount('terms.quotingHours', draft.quotingHours),
      buyingHours: amount('terms.buyingHours', draft.buyingHours),
      deliveryHours: amount('terms.deliveryHours', draft.deliveryHours),
      discount: percent('terms.discount', draft.discount),
      policy: readPolicy(draft, amount, percent),
      ...(step === ''
        ? {}
        : { priceStep: { to: amount('terms.priceStep.to', step), direction: draft.stepDirection } }),
    },
  };
  return errors.length === 0 ? { body, errors: [] } : { body: null, errors };
}

type Reader = (field: string, text: string) => string;

function readPolicy(draft: SheetDraft, amount: Reader, percent: Reader): PricePolicy {
  switch (draft.policy) {
    case 'markup':
      return { kind: 'markup', markup: percent('terms.policy.markup', draft.markup) };
    case 'markup-by-class':
      return {
        kind: 'markup-by-class',
        materials: percent('terms.policy.materials', draft.materials),
        labour: percent('terms.policy.labour', draft.labour),
        machines: percent('terms.policy.machines', draft.machines),
        other: percent('terms.policy.other', draft.other),
      };
    case 'margin':
      return { kind: 'margin', margin: percent('terms.policy.margin', draft.margin) };
    case 'hourly-earnings':
      return { kind: 'hourly-earnings', perHour: amount('terms.policy.perHour', draft.perHour) };
    case 'entered':
      return {
        kind: 'entered',
        price: amount('terms.policy.price', draft.price),
        per: draft.pricePer,
      };
  }
}
