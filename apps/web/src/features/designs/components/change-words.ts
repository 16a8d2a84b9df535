import type { DesignChange, DrawnDesign, Parameter } from '@scantling/costing';
import { exactLength, type LengthSystem } from '@scantling/units';
import { toPercent } from '../../../lib/percent.ts';
import { BILL_FIELDS, type BillField, type BillRow, KIND_WORDS } from './bill-fields.ts';
import { rowCells, valuesText } from './bill-text.ts';

type Section = DesignChange['section'];

const NOTHING = 'nothing';

const PARAMETER_WORDS: Readonly<Record<string, string>> = {
  label: 'Label',
  kind: 'Kind',
  value: 'As drawn',
  least: 'Least',
  greatest: 'Greatest',
  choices: 'To choose from',
};

export function sectionWords(section: Section): string {
  if (section === 'parameters') return 'Parameters';
  return section === 'variants' ? 'Variants' : KIND_WORDS[section].title;
}

/** "lengthAllowance" as it is read: "length allowance". */
export function inWords(name: string): string {
  return name
    .replace(/^(is|has)(?=[A-Z])/, '')
    .replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter}`)
    .toLowerCase();
}

function billField(section: Section, field: string): BillField | undefined {
  if (section === 'parameters' || section === 'variants') return undefined;
  return BILL_FIELDS[section].find(({ path }) => path === field);
}

const variantParameter = (field: string): string => field.replace(/^values\./, '');

/** A field of a changed row as a maker calls it. */
function fieldWords(section: Section, field: string, parameters: readonly Parameter[]): string {
  if (section === 'parameters') return PARAMETER_WORDS[field] ?? inWords(field);
  if (section === 'variants') {
    const named = parameters.find(({ id }) => id === variantParameter(field));
    return named?.label ?? inWords(variantParameter(field));
  }
  return billField(section, field)?.label ?? inWords(field);
}

function parameterText(parameter: Parameter | undefined, text: string, system: LengthSystem): string {
  return parameter?.kind === 'length' ? exactLength(text, system) : text;
}

/** A value of a parameter, least or greatest, as it is read: "760 mm", "= 2 * length". */
export function parameterValueText(
  parameter: Parameter,
  value: Parameter['value'] | undefined,
  system: LengthSystem,
): string {
  if (value === undefined) return '';
  return typeof value === 'string' ? parameterText(parameter, value, system) : `= ${value.formula}`;
}

/** The values of a variant in words: "Length 1350 mm; Drawers 4". */
export function variantWords(
  variant: DrawnDesign['variants'][number],
  parameters: readonly Parameter[],
  system: LengthSystem,
): string {
  return Object.entries(variant.values)
    .map(([id, text]) => {
      const parameter = parameters.find((one) => one.id === id);
      return `${parameter?.label ?? id} ${parameterText(parameter, text, system)}`;
    })
    .join('; ');
}

/** One value on one side of a comparison, sizes in the system given, with its unit. */
function valueText(
  { section, id }: DesignChange,
  field: string,
  text: string | null,
  parameters: readonly Parameter[],
  system: LengthSystem,
): string {
  if (text === null) return NOTHING;
  if (text.startsWith('=')) return `= ${text.slice(1)}`;
  if (section === 'parameters') {
    const isValue = field === 'value' || field === 'least' || field === 'greatest';
    const parameter = parameters.find((one) => one.id === id);
    return isValue ? parameterText(parameter, text, system) : text;
  }
  if (section === 'variants') {
    const parameter = parameters.find((one) => one.id === variantParameter(field));
    return field.startsWith('values.') ? parameterText(parameter, text, system) : text;
  }
  const { form, suffix } = billField(section, field) ?? { form: 'text', suffix: undefined };
  if (form === 'length') return exactLength(text, system);
  if (form === 'percent') return `${toPercent(text)} %`;
  if (form === 'yes-no') return text === 'true' ? 'yes' : 'no';
  return suffix === undefined ? text : `${text} ${suffix}`;
}

/** A whole row that came or went: "Quantity 2; Material ASH-4; Length 800 mm". */
function wholeRow({ section, id }: DesignChange, drawing: DrawnDesign, system: LengthSystem): string {
  const { parameters, variants, bill } = drawing;
  if (section === 'parameters') {
    const parameter = parameters.find((one) => one.id === id);
    return parameter ? parameterValueText(parameter, parameter.value, system) : '';
  }
  if (section === 'variants') {
    const variant = variants.find((one) => one.id === id);
    return variant ? variantWords(variant, parameters, system) : '';
  }
  const rows: readonly BillRow[] = bill[section];
  const row = rows.find((one) => one.id === id);
  if (row === undefined) return '';
  const fields = BILL_FIELDS[section].filter(({ path }) => path !== 'name' && path !== 'id');
  return valuesText(rowCells(row, fields, system), fields, system);
}

/** One value that differs, or one row that came or went. */
export interface ChangeLine {
  readonly key: string;
  readonly section: string;
  readonly row: string;
  readonly field: string;
  readonly before: string;
  readonly after: string;
}

/** Changes as lines to read, sizes in the system given. */
export function changeLines(
  changes: readonly DesignChange[],
  before: DrawnDesign,
  after: DrawnDesign,
  system: LengthSystem,
): readonly ChangeLine[] {
  return changes.flatMap((change): ChangeLine[] => {
    const { section, id, kind } = change;
    const row = { section: sectionWords(section), row: change.name };
    const key = `${section} ${id}`;
    if (kind === 'added')
      return [{ ...row, key, field: 'new', before: '', after: wholeRow(change, after, system) }];
    if (kind === 'removed')
      return [{ ...row, key, field: 'gone', before: wholeRow(change, before, system), after: '' }];
    return change.fields.map((one) => ({
      ...row,
      key: `${key} ${one.field}`,
      field: fieldWords(section, one.field, [...after.parameters, ...before.parameters]),
      before: valueText(change, one.field, one.before, before.parameters, system),
      after: valueText(change, one.field, one.after, after.parameters, system),
    }));
  });
}
