import type { NewCostSheetTerms } from '@scantling/contracts';
import type { CostingBasis, CostTerms, EnteredPer, OverheadAt, PricePolicy } from '@scantling/costing';
import { toPercent } from '../../../lib/percent.ts';
import type { CostSheetBody } from '../api/create-cost-sheet.ts';

/** A cost sheet as it is typed: every number as text, shares as percentages. */
export interface SheetDraft {
  readonly title: string;
  readonly designId: string | null;
  readonly clientId: string | null;
  readonly basis: CostingBasis;
  /** Empty: today's prices, whenever the sheet is read. */
  readonly onDate: string;
  readonly quantities: string;
  /** Empty: for no day in particular. */
  readonly promisedDate: string;
  readonly overheadAt: OverheadAt;
  readonly freight: string;
  readonly contingency: string;
  readonly quotingHours: string;
  readonly buyingHours: string;
  readonly deliveryHours: string;
  readonly discount: string;
  readonly policy: PricePolicy['kind'];
  readonly markup: string;
  readonly materials: string;
  readonly labour: string;
  readonly machines: string;
  readonly other: string;
  readonly margin: string;
  readonly perHour: string;
  readonly price: string;
  readonly pricePer: EnteredPer;
  /** Empty: the price is not stepped. */
  readonly stepTo: string;
  readonly stepDirection: 'up' | 'nearest';
}

const NO_POLICY = {
  markup: '',
  materials: '',
  labour: '',
  machines: '',
  other: '',
  margin: '',
  perHour: '',
  price: '',
  pricePer: 'batch',
} as const;

function policyDraft(policy: PricePolicy) {
  switch (policy.kind) {
    case 'markup':
      return { ...NO_POLICY, markup: toPercent(policy.markup) };
    case 'markup-by-class':
      return {
        ...NO_POLICY,
        materials: toPercent(policy.materials),
        labour: toPercent(policy.labour),
        machines: toPercent(policy.machines),
        other: toPercent(policy.other),
      };
    case 'margin':
      return { ...NO_POLICY, margin: toPercent(policy.margin) };
    case 'hourly-earnings':
      return { ...NO_POLICY, perHour: policy.perHour };
    case 'entered':
      return { ...NO_POLICY, price: policy.price, pricePer: policy.per ?? 'batch' };
  }
}

function termsDraft(terms: CostTerms) {
  return {
    promisedDate: terms.promisedDate ?? '',
    overheadAt: terms.overheadAt ?? ('planned' as const),
    freight: terms.freight,
    contingency: toPercent(terms.contingency),
    quotingHours: terms.quotingHours,
    buyingHours: terms.buyingHours,
    deliveryHours: terms.deliveryHours,
    discount: toPercent(terms.discount),
    policy: terms.policy.kind,
    ...policyDraft(terms.policy),
    stepTo: terms.priceStep?.to ?? '',
    stepDirection: terms.priceStep?.direction ?? ('up' as const),
  };
}

/** What a saved sheet looks like in its form. */
export function draftOf(sheet: CostSheetBody): SheetDraft {
  return {
    title: sheet.title,
    designId: sheet.designId,
    clientId: sheet.clientId,
    basis: sheet.basis,
    onDate: sheet.onDate ?? '',
    quantities: sheet.quantities.join(', '),
    ...termsDraft(sheet.terms),
  };
}

/** A form for a new sheet, with the workshop's margin or markup and contingency; hours and freight are the maker's to say. */
export function newDraft(
  designId: string | null,
  { policy, share, contingency }: NewCostSheetTerms,
): SheetDraft {
  return {
    title: '',
    designId,
    clientId: null,
    basis: 'commission',
    onDate: '',
    quantities: '1',
    promisedDate: '',
    overheadAt: 'planned',
    freight: '0',
    contingency: toPercent(contingency),
    quotingHours: '0',
    buyingHours: '0',
    deliveryHours: '0',
    discount: '0',
    policy,
    ...NO_POLICY,
    [policy]: toPercent(share),
    stepTo: '',
    stepDirection: 'up',
  };
}
