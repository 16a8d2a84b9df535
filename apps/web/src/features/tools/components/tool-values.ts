import type { BodyOf, createTool, ToolRecord, WorkshopSettings } from '@scantling/contracts';
import {
  type FormValues,
  isTicked,
  type RowValues,
  rowsOf,
  textOf,
} from '../../../components/record-editor/field-spec.ts';
import { fromPercent, optionalDecimal, plainDecimal, toPercent } from '../../../lib/percent.ts';

export type ToolInput = BodyOf<typeof createTool>;

export const FRESH_CUTTER: RowValues = {
  name: '',
  price: '',
  sharpenings: '0',
  sharpeningPrice: '0',
  lifeHours: '',
  isInMachineCost: false,
};

/** What a new tool starts with; the lives and shares are common practice, no source. */
export function freshTool(settings: WorkshopSettings, today: string): FormValues {
  return {
    code: '',
    name: '',
    acquisition: 'new',
    acquiredOn: today,
    bookCost: '',
    replacementCost: '',
    salvage: '0',
    lifeYears: '10',
    lifeHours: '',
    hoursPerYear: '',
    'depreciation.name': 'straight-line',
    'depreciation.factor': '2',
    'depreciation.hasSwitch': true,
    'depreciation.recoveryYears': '7',
    'depreciation.decliningPercent': '200',
    'depreciation.hoursByYear': '',
    interestRate: toPercent(settings.interestRate),
    insuranceTaxRate: toPercent(settings.insuranceTaxRate),
    floorAreaM2: '0',
    ratedKw: '0',
    load: '60',
    maintenanceShare: '50',
    maintenanceByHours: '80',
    hirePerHour: '',
    cutters: [],
    attached: [],
    soldOn: '',
    soldFor: '',
    notes: '',
  };
}

function methodValues(method: ToolRecord['depreciation']): FormValues {
  switch (method.name) {
    case 'declining-balance':
      return { 'depreciation.factor': method.factor, 'depreciation.hasSwitch': method.hasSwitch };
    case 'tax-table':
      return {
        'depreciation.recoveryYears': String(method.recoveryYears),
        'depreciation.decliningPercent': String(method.decliningPercent),
      };
    case 'units-of-production':
      return { 'depreciation.hoursByYear': (method.hoursByYear ?? []).join('\n') };
    default:
      return {};
  }
}

export function toolValues(tool: ToolRecord, fresh: FormValues): FormValues {
  return {
    ...fresh,
    code: tool.code,
    name: tool.name,
    acquisition: tool.acquisition,
    acquiredOn: tool.acquiredOn,
    bookCost: tool.bookCost,
    replacementCost: tool.replacementCost,
    salvage: tool.salvage,
    lifeYears: tool.lifeYears,
    lifeHours: tool.lifeHours ?? '',
    hoursPerYear: tool.hoursPerYear,
    'depreciation.name': tool.depreciation.name,
    ...methodValues(tool.depreciation),
    interestRate: toPercent(tool.interestRate),
    insuranceTaxRate: toPercent(tool.insuranceTaxRate),
    floorAreaM2: tool.floorAreaM2,
    ratedKw: tool.ratedKw,
    load: toPercent(tool.load),
    maintenanceShare: toPercent(tool.maintenanceShare),
    maintenanceByHours: toPercent(tool.maintenanceByHours),
    hirePerHour: tool.hirePerHour ?? '',
    cutters: tool.cutters.map((cutter) => ({ ...cutter })),
    attached: tool.attached.map((code) => ({ code })),
    soldOn: tool.soldOn ?? '',
    soldFor: tool.soldFor ?? '',
    notes: tool.notes,
  };
}

type Method = ToolInput['depreciation'];
const RECOVERY = { '3': 3, '5': 5, '7': 7, '10': 10 } as const;

function methodInput(values: FormValues): Method {
  const name = textOf(values, 'depreciation.name');
  if (name === 'sum-of-years-digits') return { name };
  if (name === 'declining-balance') {
    return {
      name,
      factor: plainDecimal(textOf(values, 'depreciation.factor')),
      hasSwitch: isTicked(values, 'depreciation.hasSwitch'),
    };
  }
  if (name === 'tax-table') {
    const years = textOf(values, 'depreciation.recoveryYears');
    const recoveryYears = years === '3' || years === '5' || years === '10' ? RECOVERY[years] : RECOVERY['7'];
    return {
      name,
      recoveryYears,
      decliningPercent: textOf(values, 'depreciation.decliningPercent') === '150' ? 150 : 200,
    };
  }
  if (name === 'units-of-production') {
    const hours = textOf(values, 'depreciation.hoursByYear').split('\n').map(plainDecimal).filter(Boolean);
    return hours.length === 0 ? { name } : { name, hoursByYear: hours };
  }
  return { name: 'straight-line' };
}

function isAcquisition(text: string): text is ToolInput['acquisition'] {
  return ['new', 'used', 'given', 'hired', 'shop-made'].includes(text);
}

export function toolInput(values: FormValues): ToolInput {
  const decimalOf = (name: string) => plainDecimal(textOf(values, name));
  const acquisition = textOf(values, 'acquisition');
  const isHired = acquisition === 'hired';
  const cell = (row: RowValues, name: string) => textOf(row, name);
  const soldOn = textOf(values, 'soldOn');
  return {
    code: textOf(values, 'code'),
    name: textOf(values, 'name'),
    acquisition: isAcquisition(acquisition) ? acquisition : 'new',
    acquiredOn: textOf(values, 'acquiredOn'),
    bookCost: decimalOf('bookCost'),
    replacementCost: decimalOf('replacementCost'),
    salvage: decimalOf('salvage'),
    lifeYears: decimalOf('lifeYears'),
    lifeHours: optionalDecimal(textOf(values, 'lifeHours')),
    hoursPerYear: decimalOf('hoursPerYear'),
    depreciation: methodInput(values),
    interestRate: fromPercent(textOf(values, 'interestRate')),
    insuranceTaxRate: fromPercent(textOf(values, 'insuranceTaxRate')),
    floorAreaM2: decimalOf('floorAreaM2'),
    ratedKw: decimalOf('ratedKw'),
    load: fromPercent(textOf(values, 'load')),
    maintenanceShare: fromPercent(textOf(values, 'maintenanceShare')),
    maintenanceByHours: fromPercent(textOf(values, 'maintenanceByHours')),
    hirePerHour: isHired ? optionalDecimal(textOf(values, 'hirePerHour')) : null,
    cutters: rowsOf(values, 'cutters').map((row) => ({
      name: cell(row, 'name'),
      price: plainDecimal(cell(row, 'price')),
      sharpenings: plainDecimal(cell(row, 'sharpenings')),
      sharpeningPrice: plainDecimal(cell(row, 'sharpeningPrice')),
      lifeHours: plainDecimal(cell(row, 'lifeHours')),
      isInMachineCost: isTicked(row, 'isInMachineCost'),
    })),
    attached: rowsOf(values, 'attached')
      .map((row) => cell(row, 'code'))
      .filter(Boolean),
    soldOn: soldOn === '' ? null : soldOn,
    soldFor: soldOn === '' ? null : optionalDecimal(textOf(values, 'soldFor')),
    notes: textOf(values, 'notes'),
  };
}
