import type { WorkshopSettings } from '@scantling/contracts';
import type { MaterialForm } from '@scantling/costing';
import type { Choice } from '../../../components/choice-list.tsx';

export function choicesOf(words: Readonly<Record<string, string>>): readonly Choice[] {
  return Object.entries(words).map(([id, label]) => ({ id, label }));
}

export const FORM_WORDS: Readonly<Record<MaterialForm, string>> = {
  'rough-lumber': 'Rough lumber',
  'dimensioned-lumber': 'Dimensioned lumber',
  sheet: 'Sheet',
  each: 'Goods sold by the piece',
  pack: 'Goods sold by the pack',
  volume: 'Goods sold by volume',
  weight: 'Goods sold by weight',
  area: 'Goods sold by area',
  length: 'Goods sold by length',
  service: 'Bought service',
};

/** The forms that parts are cut from; their fields stand on the sheet even before they are filled in. */
export const CUT_FORMS = ['rough-lumber', 'dimensioned-lumber', 'sheet', 'length'] as const;

type Pool = WorkshopSettings['workshopOverhead'];

export const BASE_WORDS: Readonly<Record<Pool['base'], string>> = {
  'productive-hours': 'Productive hours',
  'machine-hours': 'Machine hours',
  'labour-cost': 'Share of labour cost',
  'prime-cost': 'Share of prime cost',
};

export const AVERAGE_INVESTMENT_WORDS: Readonly<Record<WorkshopSettings['averageInvestment'], string>> = {
  forestry: 'Year by year',
  simple: 'Plain mean',
};

export const NEW_SHEET_WORDS: Readonly<Record<WorkshopSettings['newCostSheet']['policy'], string>> = {
  margin: 'Margin, a share of the price',
  markup: 'Markup, on top of the cost',
};

export const LOST_ENQUIRY_WORDS: Readonly<Record<WorkshopSettings['lostEnquiryHours'], string>> = {
  'administration-pool': 'in administration overhead: productive shares count them as productive',
  'labour-rate': 'in labour rates: productive shares leave them out already',
};
