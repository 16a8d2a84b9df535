import type { Workshop, WorkshopSettings } from '@scantling/contracts';
import { MATERIAL_FORMS, type MaterialForm } from '@scantling/costing';
import { isCurrency } from '@scantling/money';
import { type FormValues, textOf } from '../../../components/record-editor/field-spec.ts';
import { fromPercent, plainDecimal, toPercent } from '../../../lib/percent.ts';
import type { WorkshopBody } from '../api/edit-workshop.ts';
import { letterheadInput, letterheadValues, quotingInput, quotingValues } from './paper-values.ts';
import { BASE_WORDS, CUT_FORMS } from './workshop-words.ts';

export const POOLS = ['workshopOverhead', 'administrationOverhead'] as const;
export type PoolName = (typeof POOLS)[number];
type PoolSettings = WorkshopSettings[PoolName];
type FormSettings = NonNullable<WorkshopSettings['forms'][MaterialForm]>;

/** The forms of material the sheet shows: those that are cut, and whatever else has settings. */
export function shownForms(settings: WorkshopSettings): readonly MaterialForm[] {
  return MATERIAL_FORMS.filter(
    (form) => CUT_FORMS.some((cut) => cut === form) || settings.forms[form] !== undefined,
  );
}

function formValues(form: MaterialForm, settings: FormSettings | undefined): FormValues {
  const at = `settings.forms.${form}`;
  return {
    [`${at}.lengthAllowance`]: settings?.lengthAllowance ?? '',
    [`${at}.widthAllowance`]: settings?.widthAllowance ?? '',
    [`${at}.thicknessAllowance`]: settings?.thicknessAllowance ?? '',
    [`${at}.yieldFactor`]: settings === undefined ? '' : toPercent(settings.yieldFactor),
    [`${at}.offcutValueShare`]: settings === undefined ? '' : toPercent(settings.offcutValueShare),
  };
}

function poolValues(name: PoolName, pool: PoolSettings): FormValues {
  const at = `settings.${name}`;
  return {
    [`${at}.base`]: pool.base,
    [`${at}.plannedBase`]: pool.plannedBase,
    [`${at}.actual.amount`]: pool.actual?.amount ?? '',
    [`${at}.actual.base`]: pool.actual?.base ?? '',
  };
}

export function workshopValues({ name, currency, unitSystem, settings }: Workshop): FormValues {
  return {
    name,
    currency,
    unitSystem,
    'settings.floorCostPerM2': settings.floorCostPerM2,
    'settings.electricityPerKwh': settings.electricityPerKwh,
    'settings.priceAgeDays': String(settings.priceAgeDays),
    'settings.kerf': settings.kerf,
    'settings.resawKerf': settings.resawKerf,
    'settings.resawCleanUp': settings.resawCleanUp,
    'settings.interestRate': toPercent(settings.interestRate),
    'settings.insuranceTaxRate': toPercent(settings.insuranceTaxRate),
    'settings.averageInvestment': settings.averageInvestment,
    ...Object.assign({}, ...shownForms(settings).map((form) => formValues(form, settings.forms[form]))),
    ...letterheadValues(settings.letterhead),
    ...quotingValues(settings.quoting),
    ...Object.assign({}, ...POOLS.map((pool) => poolValues(pool, settings[pool]))),
  };
}

/** A form of material whose fields are all empty has no settings. */
function formInput(values: FormValues, form: MaterialForm): FormSettings | null {
  const typed = (field: string) => textOf(values, `settings.forms.${form}.${field}`);
  const settings = {
    lengthAllowance: plainDecimal(typed('lengthAllowance')),
    widthAllowance: plainDecimal(typed('widthAllowance')),
    thicknessAllowance: plainDecimal(typed('thicknessAllowance')),
    yieldFactor: fromPercent(typed('yieldFactor')),
    offcutValueShare: fromPercent(typed('offcutValueShare')),
  };
  return Object.values(settings).every((value) => value === '') ? null : settings;
}

function isBase(text: string): text is PoolSettings['base'] {
  return Object.hasOwn(BASE_WORDS, text);
}

function poolInput(values: FormValues, name: PoolName): PoolSettings {
  const typed = (field: string) => textOf(values, `settings.${name}.${field}`);
  const base = typed('base');
  const amount = plainDecimal(typed('actual.amount'));
  const actualBase = plainDecimal(typed('actual.base'));
  return {
    base: isBase(base) ? base : 'productive-hours',
    plannedBase: plainDecimal(typed('plannedBase')),
    actual: amount === '' && actualBase === '' ? null : { amount, base: actualBase },
  };
}

/** @throws RangeError when the chosen currency is none, which the list of choices does not offer */
export function workshopInput(values: FormValues): WorkshopBody {
  const typed = (field: string) => textOf(values, `settings.${field}`);
  const currency = textOf(values, 'currency');
  if (!isCurrency(currency)) throw new RangeError(`"${currency}" is no currency of ISO 4217`);
  const forms: Partial<Record<MaterialForm, FormSettings>> = {};
  for (const form of MATERIAL_FORMS) {
    const settings = formInput(values, form);
    if (settings !== null) forms[form] = settings;
  }
  return {
    name: textOf(values, 'name'),
    currency,
    unitSystem: textOf(values, 'unitSystem') === 'imperial' ? 'imperial' : 'metric',
    settings: {
      floorCostPerM2: plainDecimal(typed('floorCostPerM2')),
      electricityPerKwh: plainDecimal(typed('electricityPerKwh')),
      // What is no whole number goes to the server as nothing, which names the field.
      priceAgeDays: /^\d{1,4}$/.test(typed('priceAgeDays')) ? Number(typed('priceAgeDays')) : Number.NaN,
      kerf: plainDecimal(typed('kerf')),
      resawKerf: plainDecimal(typed('resawKerf')),
      resawCleanUp: plainDecimal(typed('resawCleanUp')),
      interestRate: fromPercent(typed('interestRate')),
      insuranceTaxRate: fromPercent(typed('insuranceTaxRate')),
      averageInvestment: typed('averageInvestment') === 'simple' ? 'simple' : 'forestry',
      forms,
      workshopOverhead: poolInput(values, 'workshopOverhead'),
      administrationOverhead: poolInput(values, 'administrationOverhead'),
      letterhead: letterheadInput(values),
      quoting: quotingInput(values),
    },
  };
}
