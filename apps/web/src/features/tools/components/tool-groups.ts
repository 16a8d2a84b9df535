import type { ToolRecord } from '@scantling/contracts';
import type { Choice } from '../../../components/choice-list.tsx';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { FRESH_CUTTER } from './tool-values.ts';
import { ACQUISITION_WORDS, METHOD_WORDS } from './tool-words.ts';

function choicesOf(words: Readonly<Record<string, string>>): readonly Choice[] {
  return Object.entries(words).map(([id, label]) => ({ id, label }));
}

const isHired = (values: FormValues) => textOf(values, 'acquisition') === 'hired';
const hasMethod = (name: ToolRecord['depreciation']['name']) => (values: FormValues) =>
  !isHired(values) && textOf(values, 'depreciation.name') === name;

/** The fields of a tool. `others`: the tools that can run along with it. */
export function toolGroups(currency: string, others: readonly Choice[]): readonly GroupSpec[] {
  const money = { kind: 'decimal', suffix: currency } as const;
  const percent = { kind: 'decimal', suffix: '%' } as const;
  return [
    {
      legend: 'What it is',
      fields: [
        { name: 'name', label: 'Name', kind: 'text', isRequired: true },
        {
          name: 'code',
          label: 'Code',
          kind: 'text',
          isRequired: true,
          hint: 'Operations name the machine by it',
        },
        {
          name: 'acquisition',
          label: 'How it came',
          kind: 'choice',
          choices: choicesOf(ACQUISITION_WORDS),
        },
        { name: 'acquiredOn', label: 'Came on', kind: 'date', isRequired: true },
        {
          name: 'hirePerHour',
          label: 'Hire for an hour',
          ...money,
          isShown: isHired,
        },
      ],
    },
    {
      legend: 'Value and life',
      fields: [
        { name: 'bookCost', label: 'Paid', ...money, hint: '0 for a tool that was given' },
        {
          name: 'replacementCost',
          label: 'Replacement cost',
          ...money,
          hint: 'What the same capacity costs today',
        },
        { name: 'salvage', label: 'Salvage value', ...money, hint: 'At the end of its life' },
        { name: 'lifeYears', label: 'Life', kind: 'decimal', suffix: 'years' },
        {
          name: 'lifeHours',
          label: 'Life in hours run',
          kind: 'decimal',
          suffix: 'h',
          hint: 'Empty where hours do not wear it out',
        },
        { name: 'hoursPerYear', label: 'Productive hours', kind: 'decimal', suffix: 'h a year' },
      ],
    },
    {
      legend: 'How the books write it off',
      fields: [
        {
          name: 'depreciation.name',
          label: 'Method',
          kind: 'choice',
          choices: choicesOf(METHOD_WORDS),
          isShown: (values) => !isHired(values),
        },
        {
          name: 'depreciation.factor',
          label: 'Factor',
          kind: 'decimal',
          hint: '2 is double declining, 1.5 is 150 %',
          isShown: hasMethod('declining-balance'),
        },
        {
          name: 'depreciation.hasSwitch',
          label: 'Straight line as soon as that is more',
          kind: 'check',
          isShown: hasMethod('declining-balance'),
        },
        {
          name: 'depreciation.recoveryYears',
          label: 'Recovery period',
          kind: 'choice',
          choices: choicesOf({ '3': '3 years', '5': '5 years', '7': '7 years', '10': '10 years' }),
          isShown: hasMethod('tax-table'),
        },
        {
          name: 'depreciation.decliningPercent',
          label: 'Table',
          kind: 'choice',
          choices: choicesOf({ '200': '200 % declining', '150': '150 % declining' }),
          isShown: hasMethod('tax-table'),
        },
        {
          name: 'depreciation.hoursByYear',
          label: 'Hours run in each year',
          kind: 'lines',
          hint: 'One year a line, the first year first; empty: the productive hours planned',
          isShown: hasMethod('units-of-production'),
        },
        { name: 'soldOn', label: 'Sold or scrapped on', kind: 'date', isShown: (values) => !isHired(values) },
        {
          name: 'soldFor',
          label: 'Fetched',
          ...money,
          hint: 'Less the cost of selling',
          isShown: (values) => textOf(values, 'soldOn') !== '',
        },
      ],
    },
    {
      legend: 'What an hour of it takes',
      fields: [
        { name: 'interestRate', label: 'Interest a year', ...percent },
        {
          name: 'insuranceTaxRate',
          label: 'Insurance and tax a year',
          ...percent,
          hint: 'Of the average investment',
        },
        { name: 'floorAreaM2', label: 'Floor it takes', kind: 'decimal', suffix: 'm²' },
        { name: 'ratedKw', label: 'Rated power', kind: 'decimal', suffix: 'kW' },
        { name: 'load', label: 'Average draw', ...percent, hint: 'Of the rated power, while it runs' },
        {
          name: 'maintenanceShare',
          label: 'Maintenance',
          ...percent,
          hint: 'Of straight-line depreciation of the replacement cost',
        },
        { name: 'maintenanceByHours', label: 'Of it caused by hours', ...percent },
      ],
    },
    {
      legend: 'What goes with it',
      fields: [
        {
          name: 'cutters',
          label: 'Blades, knives and cutters',
          kind: 'rows',
          addText: 'Add a cutter',
          fresh: FRESH_CUTTER,
          cells: [
            { name: 'name', label: 'Name', kind: 'text', isRequired: true },
            { name: 'price', label: 'Price', ...money },
            { name: 'sharpenings', label: 'Sharpenings in its life', kind: 'decimal' },
            { name: 'sharpeningPrice', label: 'Price of one', ...money },
            { name: 'lifeHours', label: 'Whole life', kind: 'decimal', suffix: 'h of cutting' },
            { name: 'isInMachineCost', label: 'Came with the machine', kind: 'check' },
          ],
        },
        {
          name: 'attached',
          label: 'Machines that run along with it',
          hint: 'Dust extraction, for one; their hour is in the hour of this one',
          kind: 'rows',
          addText: 'Add a machine',
          fresh: { code: '' },
          cells: [{ name: 'code', label: 'Machine', kind: 'search', choices: others }],
        },
        { name: 'notes', label: 'Notes', kind: 'lines' },
      ],
    },
  ];
}
