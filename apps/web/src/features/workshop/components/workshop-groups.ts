import type { WorkshopSettings } from '@scantling/contracts';
import type { MaterialForm } from '@scantling/costing';
import { CURRENCIES } from '@scantling/money';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { type PoolName, shownForms, WRITTEN_IN } from './workshop-values.ts';
import {
  AVERAGE_INVESTMENT_WORDS,
  BASE_WORDS,
  choicesOf,
  FORM_WORDS,
  LOST_ENQUIRY_WORDS,
  NEW_SHEET_WORDS,
} from './workshop-words.ts';

/** A decimal field offers digits only on a phone, and inches are written with a stroke. */
function lengthKind(values: FormValues) {
  return textOf(values, WRITTEN_IN) === 'imperial'
    ? ({ kind: 'text' } as const)
    : ({ kind: 'decimal', suffix: 'mm' } as const);
}
const PERCENT = { kind: 'decimal', suffix: '%' } as const;

function formGroup(form: MaterialForm, values: FormValues): GroupSpec {
  const lengths = lengthKind(values);
  const at = `settings.forms.${form}`;
  return {
    legend: `Cutting from ${FORM_WORDS[form].toLowerCase()}`,
    fields: [
      { name: `${at}.lengthAllowance`, label: 'Added to lengths', ...lengths },
      { name: `${at}.widthAllowance`, label: 'Added to widths', ...lengths },
      { name: `${at}.thicknessAllowance`, label: 'Added to thicknesses', ...lengths },
      {
        name: `${at}.yieldFactor`,
        label: 'Yield',
        ...PERCENT,
        hint: 'Rough parts as a share of what is bought: 80 % is 20 % waste of what is bought, or 25 % added to the need',
      },
      {
        name: `${at}.offcutValueShare`,
        label: 'Value of offcuts',
        ...PERCENT,
        hint: 'Of the price, for what goes to stock',
      },
    ],
  };
}

function poolGroup(name: PoolName, legend: string, values: FormValues, currency: string): GroupSpec {
  const at = `settings.${name}`;
  const suffix = textOf(values, `${at}.base`).endsWith('-hours') ? 'h a year' : `${currency} a year`;
  return {
    legend,
    fields: [
      { name: `${at}.base`, label: 'Recovered over', kind: 'choice', choices: choicesOf(BASE_WORDS) },
      { name: `${at}.plannedBase`, label: 'Planned', kind: 'decimal', suffix },
      {
        name: `${at}.actual.amount`,
        label: 'Spent in the year as it went',
        kind: 'decimal',
        suffix: currency,
        hint: 'Net of what rates recover; empty while it is not known',
      },
      { name: `${at}.actual.base`, label: 'And the base there was', kind: 'decimal', suffix },
    ],
  };
}

/** What every cost sheet and rate rests on. */
export function workshopGroups(settings: WorkshopSettings, values: FormValues): readonly GroupSpec[] {
  const currency = textOf(values, 'currency');
  return [
    {
      legend: 'The workshop',
      fields: [
        { name: 'name', label: 'Name', kind: 'text', isRequired: true },
        {
          name: 'currency',
          label: 'Currency',
          kind: 'search',
          choices: CURRENCIES.map((code) => ({ id: code, label: code })),
          hint: 'Amounts already entered are not converted',
          isRequired: true,
        },
        {
          name: 'unitSystem',
          label: 'Lengths in',
          kind: 'choice',
          choices: choicesOf({ metric: 'Millimetres', imperial: 'Feet and inches' }),
        },
      ],
    },
    {
      legend: 'What every machine shares',
      fields: [
        {
          name: 'settings.floorCostPerM2',
          label: 'Floor, for a year',
          kind: 'decimal',
          suffix: `${currency} per m²`,
          hint: 'Rent, heat and upkeep',
        },
        {
          name: 'settings.electricityPerKwh',
          label: 'Electricity',
          kind: 'decimal',
          suffix: `${currency} per kWh`,
        },
        {
          name: 'settings.averageInvestment',
          label: 'Average investment',
          kind: 'choice',
          choices: choicesOf(AVERAGE_INVESTMENT_WORDS),
          hint: 'Year by year: (P − S)(N + 1) / 2N + S; plain mean: (P + S) / 2; P price, S salvage, N years',
        },
        { name: 'settings.interestRate', label: 'Interest a new tool starts with', ...PERCENT },
        {
          name: 'settings.insuranceTaxRate',
          label: 'Insurance and tax a new tool starts with',
          ...PERCENT,
        },
      ],
    },
    {
      legend: 'Prices',
      fields: [
        {
          name: 'settings.priceAgeDays',
          label: 'A list is old after',
          kind: 'decimal',
          suffix: 'days',
          hint: 'Cost sheets point out prices from older lists',
        },
      ],
    },
    {
      legend: 'What a new cost sheet starts with',
      fields: [
        {
          name: 'settings.newCostSheet.policy',
          label: 'Price by',
          kind: 'choice',
          choices: choicesOf(NEW_SHEET_WORDS),
        },
        {
          name: 'settings.newCostSheet.share',
          label: 'Margin or markup',
          ...PERCENT,
          hint: '0 brings back the costs and nothing beyond them',
        },
        {
          name: 'settings.newCostSheet.contingency',
          label: 'Contingency',
          ...PERCENT,
          hint: 'Of the cost, for what goes wrong; sheets made before stay as they are',
        },
      ],
    },
    {
      legend: 'Saw cuts',
      fields: [
        { name: 'settings.kerf', label: 'Kerf', ...lengthKind(values), hint: 'Width of a saw cut' },
        {
          name: 'settings.resawKerf',
          label: 'Lost to a resaw cut',
          ...lengthKind(values),
          hint: 'With its re-jointing',
        },
        {
          name: 'settings.resawCleanUp',
          label: 'Clean-up before resawing',
          ...lengthKind(values),
          hint: 'Off both outer faces together',
        },
      ],
    },
    ...shownForms(settings).map((form) => formGroup(form, values)),
    poolGroup('workshopOverhead', 'Workshop overhead', values, currency),
    poolGroup('administrationOverhead', 'Administration overhead', values, currency),
    {
      legend: 'Hours on lost enquiries',
      fields: [
        {
          name: 'settings.lostEnquiryHours',
          label: 'Come back',
          kind: 'choice',
          choices: choicesOf(LOST_ENQUIRY_WORDS),
          hint: 'In one place only; the overhead screen shows the sum',
          isWide: true,
        },
      ],
    },
  ];
}
