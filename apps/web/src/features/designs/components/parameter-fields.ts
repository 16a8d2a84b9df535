import { PARAMETER_KINDS, type ParameterKind } from '@scantling/costing';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import type { BillField, FieldForm } from './bill-fields.ts';

const FORMS: Readonly<Record<ParameterKind, FieldForm>> = {
  length: 'length',
  count: 'count',
  number: 'number',
  material: 'text',
};

function typed(path: string, label: string, form: FieldForm, isRequired = true): BillField {
  return { path, label, form, isRequired, isColumn: true };
}

/** A value of a kind of parameter; materials are chosen among those of the workshop. */
export function valueField(path: string, label: string, kind: ParameterKind, isRequired: boolean): BillField {
  const field = typed(path, label, FORMS[kind], isRequired);
  return kind === 'material' ? { ...field, choicesFrom: 'materials' } : field;
}

const NAME = typed('label', 'Name', 'text');
const ID = typed('id', 'Id', 'text');
const KIND: BillField = { ...typed('kind', 'Kind', 'choice'), choices: PARAMETER_KINDS };
const CHOICES: BillField = { ...typed('choices', 'Choices', 'ids', false), choicesFrom: 'materials' };

/** The values of a parameter, in the order they are typed; some are of its kind. */
export function parameterFields(kind: ParameterKind): readonly BillField[] {
  return [
    NAME,
    ID,
    KIND,
    valueField('value', 'As drawn', kind, true),
    typed('least', 'Least', FORMS[kind], false),
    typed('greatest', 'Greatest', FORMS[kind], false),
    CHOICES,
  ];
}

/** The kind a row says, or undefined where it says none that there is. */
export function kindOf(row: GridRow | undefined): ParameterKind | undefined {
  return PARAMETER_KINDS.find((kind) => kind === row?.cells.kind);
}

/** Where a variant keeps its value of a parameter: by the row, so that the parameter may get another id. */
export function variantPath(parameter: GridRow): string {
  return `of-${parameter.key}`;
}

export const FRESH_PARAMETER: Readonly<Record<string, string>> = { kind: 'length' };
