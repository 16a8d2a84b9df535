import type { BodyOf, createMaterial, Material } from '@scantling/contracts';
import { MATERIAL_FORMS, type MaterialForm } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import type { Choice } from '../../../components/choice-list.tsx';
import {
  type FieldSpec,
  type FormValues,
  type GroupSpec,
  isTicked,
  textOf,
} from '../../../components/record-editor/field-spec.ts';
import { lengthText, readLengthText } from '../../../lib/length-text.ts';
import { fromPercent, optionalDecimal, toPercent } from '../../../lib/percent.ts';
import type { Draft } from '../../../lib/record-calls.ts';
import { FORM_WORDS } from './material-words.ts';

const FORMS = MATERIAL_FORMS.map((form) => ({ id: form, label: FORM_WORDS[form] }));
const WOOD: readonly MaterialForm[] = ['rough-lumber', 'dimensioned-lumber'];
const SIZED: readonly MaterialForm[] = ['dimensioned-lumber', 'sheet', 'length', 'area'];
const CUT: readonly MaterialForm[] = ['rough-lumber', 'dimensioned-lumber', 'sheet', 'length', 'area'];

const isOf =
  (forms: readonly MaterialForm[]) =>
  (values: FormValues): boolean =>
    forms.some((form) => form === values.form);
const isFinish = (values: FormValues): boolean => isTicked(values, 'isFinish');

const SIZES = [
  [
    'nominalThicknessMm',
    'Thickness it is sold by',
    ['rough-lumber'],
    { metric: '4/4 is 25.4', imperial: '4/4 is 1' },
  ],
  ['surfacedThicknessMm', 'Once both faces are planed', ['rough-lumber'], null],
  ['thicknessMm', 'Thickness as it measures', SIZED, { metric: '', imperial: 'Such as 23/32, or 18 mm' }],
  ['widthMm', 'Width', SIZED, null],
  ['lengthMm', 'Length', SIZED, null],
] as const;

function sizeFields(system: LengthSystem): readonly FieldSpec[] {
  return SIZES.map(([name, label, forms, hints]) => {
    const hint = hints?.[system] ?? '';
    const shown = { name, label, isShown: isOf(forms), ...(hint === '' ? {} : { hint }) };
    // A decimal field offers digits only on a phone, and inches are written with a stroke.
    return system === 'metric' ? { ...shown, kind: 'decimal', suffix: 'mm' } : { ...shown, kind: 'text' };
  });
}

/** The fields a material of the chosen form has. */
export function materialGroups(suppliers: readonly Choice[], system: LengthSystem) {
  const groups: readonly GroupSpec[] = [
    {
      legend: 'What it is',
      fields: [
        { name: 'code', label: 'Code', kind: 'text', isRequired: true, hint: 'Bills name it so' },
        { name: 'name', label: 'Name', kind: 'text', isRequired: true, isWide: true },
        { name: 'form', label: 'Form', kind: 'choice', choices: FORMS, isRequired: true },
        {
          name: 'family',
          label: 'Family',
          kind: 'text',
          hint: 'Shared by those that differ in thickness only',
        },
        { name: 'species', label: 'Species', kind: 'text', isShown: isOf([...WOOD, 'sheet', 'area']) },
        { name: 'grade', label: 'Grade', kind: 'text', isShown: isOf([...WOOD, 'sheet', 'area']) },
        {
          name: 'quarter',
          label: 'Quarter',
          kind: 'text',
          isShown: isOf(['rough-lumber']),
          hint: 'Such as 4/4',
        },
        {
          name: 'preferredSupplierId',
          label: 'Preferred supplier',
          kind: 'search',
          choices: suppliers,
          hint: 'Its price is used while it has one in force',
        },
      ],
    },
    {
      legend: 'What costing needs',
      fields: [
        ...sizeFields(system),
        { name: 'densityKgM3', label: 'Density', kind: 'decimal', suffix: 'kg/m³' },
        {
          name: 'yieldFactor',
          label: 'Yield',
          kind: 'decimal',
          suffix: '%',
          isShown: isOf(CUT),
          hint: "Part face on face bought; empty: the workshop's",
        },
        {
          name: 'offcutValueShare',
          label: 'An offcut is worth',
          kind: 'decimal',
          suffix: '% of cost',
          isShown: isOf(CUT),
          hint: "Empty: the workshop's",
        },
        { name: 'packContent', label: 'Content of a pack', kind: 'decimal', isShown: isOf(['pack']) },
        {
          name: 'boardContent',
          label: 'Content of a board',
          kind: 'decimal',
          suffix: 'bd ft',
          isShown: isOf(WOOD),
          hint: 'Board feet of one board as the yard counts it',
        },
      ],
    },
    {
      legend: 'Finish',
      fields: [
        { name: 'isFinish', label: 'It is a finish', kind: 'check' },
        {
          name: 'finish.volumeSolids',
          label: 'Volume solids',
          kind: 'decimal',
          suffix: '%',
          hint: 'As applied, after thinning',
          isShown: isFinish,
        },
        {
          name: 'finish.coverageM2PerL',
          label: 'Coverage',
          kind: 'decimal',
          suffix: 'm² per l',
          isShown: isFinish,
        },
        {
          name: 'finish.coverageIsTheoretical',
          label: 'Coverage is theoretical, without loss',
          kind: 'check',
          isShown: isFinish,
        },
        { name: 'finish.goesOnByWiping', label: 'Goes on by wiping', kind: 'check', isShown: isFinish },
        {
          name: 'finish.selfHeatingRags',
          label: 'Rags can heat by themselves',
          kind: 'check',
          isShown: isFinish,
        },
      ],
    },
    { fields: [{ name: 'notes', label: 'Notes', kind: 'lines' }] },
  ];
  return groups;
}

const TEXTS = ['family', 'species', 'grade', 'quarter'] as const;
const MEASURES = ['densityKgM3', 'packContent', 'boardContent'] as const;
const LENGTHS = SIZES.map(([name]) => name);
const SHARES = ['yieldFactor', 'offcutValueShare'] as const;

export function materialValues(material: Material | null, system: LengthSystem): FormValues {
  const finish = material?.finish;
  return {
    code: material?.code ?? '',
    name: material?.name ?? '',
    form: material?.form ?? 'rough-lumber',
    preferredSupplierId: material?.preferredSupplierId ?? '',
    notes: material?.notes ?? '',
    ...Object.fromEntries([...TEXTS, ...MEASURES].map((name) => [name, material?.[name] ?? ''])),
    ...Object.fromEntries(LENGTHS.map((name) => [name, lengthText(material?.[name] ?? null, system)])),
    ...Object.fromEntries(SHARES.map((name) => [name, toPercent(material?.[name] ?? '')])),
    isFinish: finish !== null && finish !== undefined,
    'finish.volumeSolids': toPercent(finish?.volumeSolids ?? ''),
    'finish.coverageM2PerL': finish?.coverageM2PerL ?? '',
    'finish.coverageIsTheoretical': finish?.coverageIsTheoretical ?? false,
    'finish.goesOnByWiping': finish?.goesOnByWiping ?? false,
    'finish.selfHeatingRags': finish?.selfHeatingRags ?? false,
  };
}

/** What the form says; fields that do not concern the form keep what they held. */
export function materialInput(
  values: FormValues,
  system: LengthSystem,
): Draft<BodyOf<typeof createMaterial>> {
  const orNull = (name: string): string | null => textOf(values, name) || null;
  const share = (name: string): string | null => orNull(name) && fromPercent(textOf(values, name));
  return {
    code: textOf(values, 'code'),
    name: textOf(values, 'name'),
    form: textOf(values, 'form'),
    ...Object.fromEntries(TEXTS.map((name) => [name, orNull(name)])),
    ...Object.fromEntries(MEASURES.map((name) => [name, optionalDecimal(textOf(values, name))])),
    ...Object.fromEntries(
      LENGTHS.map((name) => [name, readLengthText(textOf(values, name), system) || null]),
    ),
    ...Object.fromEntries(SHARES.map((name) => [name, share(name)])),
    preferredSupplierId: orNull('preferredSupplierId'),
    finish: isFinish(values)
      ? {
          volumeSolids: share('finish.volumeSolids'),
          coverageM2PerL: optionalDecimal(textOf(values, 'finish.coverageM2PerL')),
          coverageIsTheoretical: isTicked(values, 'finish.coverageIsTheoretical'),
          goesOnByWiping: isTicked(values, 'finish.goesOnByWiping'),
          selfHeatingRags: isTicked(values, 'finish.selfHeatingRags'),
        }
      : null,
    notes: textOf(values, 'notes'),
  };
}
