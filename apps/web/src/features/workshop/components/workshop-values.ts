import type { Workshop, WorkshopSettings } from '@scantling/contracts';
import { MATERIAL_FORMS, type MaterialForm } from '@scantling/costing';
import { isCurrency } from '@scantling/money';
import type { LengthSystem } from '@scantling/units';
import { type FormValues, textOf } from '../../../components/record-editor/field-spec.ts';
import { lengthText, readLengthText } from '../../../lib/length-text.ts';
import { fromPercent, plainDecimal, toPercent } from '../../../lib/percent.ts';
import type { WorkshopBody } from '../api/edit-workshop.ts';
import { letterheadInput, letterheadValues, quotingInput, quotingValues } from './paper-values.ts';
import { BASE_WORDS, CUT_FORMS } from './workshop-words.ts';

export const WRITTEN_IN = 'lengthsWrittenIn';
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

function formValues(
  form: MaterialForm,
  settings: FormSettings | undefined,
  system: LengthSystem,
): FormValues {
  const at = `settings.forms.${form}`;
  return {
    [`${at}.lengthAllowance`]: lengthText(settings?.lengthAllowance ?? null, system),
    [`${at}.widthAllowance`]: lengthText(settings?.widthAllowance ?? null, system),
    [`${at}.thicknessAllowance`]: lengthText(settings?.thicknessAllowance ?? null, system),
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
    // What the lengths on the form are written in, whatever is chosen for later.
    [WRITTEN_IN]: unitSystem,
    'settings.floorCostPerM2': settings.floorCostPerM2,
    'settings.electricityPerKwh': settings.electricityPerKwh,
    'settings.priceAgeDays': String(settings.priceAgeDays),
    'settings.newCostSheet.policy': settings.newCostSheet.policy,
    'settings.newCostSheet.share': toPercent(settings.newCostSheet.share),
    'settings.newCostSheet.contingency': toPercent(settings.newCostSheet.contingency),
    'settings.kerf': lengthText(settings.kerf, unitSystem),
    'settings.resawKerf': lengthText(settings.resawKerf, unitSystem),
    'settings.resawCleanUp': lengthText(settings.resawCleanUp, unitSystem),
    'settings.interestRate': toPercent(settings.interestRate),
    'settings.insuranceTaxRate': toPercent(settings.insuranceTaxRate),
    'settings.averageInvestment': settings.averageInvestment,
    'settings.lostEnquiryHours': settings.lostEnquiryHours,
    ...Object.assign(
      {},
      ...shownForms(settings).map((form) => formValues(form, settings.forms[form], unitSystem)),
    ),
    ...letterheadValues(settings.letterhead),
    ...quotingValues(settings.quoting),
    ...Object.assign({}, ...POOLS.map((pool) => poolValues(pool, settings[pool]))),
  };
}

function systemOf(values: FormValues, name: string): LengthSystem {
  return textOf(values, name) === 'imperial' ? 'imperial' : 'metric';
}

/** A form of material whose fields are all empty has no settings. */
function formInput(values: FormValues, form: MaterialForm): FormSettings | null {
  const typed = (field: string) => textOf(values, `settings.forms.${form}.${field}`);
  const settings = {
    lengthAllowance: readLengthText(typed('lengthAllowance'), systemOf(values, WRITTEN_IN)),
    widthAllowance: readLengthText(typed('widthAllowance'), systemOf(values, WRITTEN_IN)),
    thicknessAllowance: readLengthText(typed('thicknessAllowance'), systemOf(values, WRITTEN_IN)),
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
  const length = (field: string) => readLengthText(typed(field), systemOf(values, WRITTEN_IN));
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
    unitSystem: systemOf(values, 'unitSystem'),
    settings: {
      floorCostPerM2: plainDecimal(typed('floorCostPerM2')),
      electricityPerKwh: plainDecimal(typed('electricityPerKwh')),
      // What is no whole number goes to the server as nothing, which names the field.
      priceAgeDays: /^\d{1,4}$/.test(typed('priceAgeDays')) ? Number(typed('priceAgeDays')) : Number.NaN,
      newCostSheet: {
        policy: typed('newCostSheet.policy') === 'markup' ? 'markup' : 'margin',
        share: fromPercent(typed('newCostSheet.share')),
        contingency: fromPercent(typed('newCostSheet.contingency')),
      },
      kerf: length('kerf'),
      resawKerf: length('resawKerf'),
      resawCleanUp: length('resawCleanUp'),
      interestRate: fromPercent(typed('interestRate')),
      insuranceTaxRate: fromPercent(typed('insuranceTaxRate')),
      lostEnquiryHours: typed('lostEnquiryHours') === 'labour-rate' ? 'labour-rate' : 'administration-pool',
      averageInvestment: typed('averageInvestment') === 'simple' ? 'simple' : 'forestry',
      forms,
      workshopOverhead: poolInput(values, 'workshopOverhead'),
      administrationOverhead: poolInput(values, 'administrationOverhead'),
      letterhead: letterheadInput(values),
      quoting: quotingInput(values),
    },
  };
}
