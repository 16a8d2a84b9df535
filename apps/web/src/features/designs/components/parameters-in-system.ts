import { isFormula } from '@scantling/costing';
import type { LengthSystem } from '@scantling/units';
import type { GridRow } from '../../../components/edit-grid/edit-column.ts';
import { lengthText } from '../../../lib/length-text.ts';
import { kindOf, valueField, variantPath } from './parameter-fields.ts';
import type { ParameterRows } from './parameter-rows.ts';
import { readValue, Unreadable } from './read-row.ts';

/** A length written in the other system; formulas and what cannot be read stay as they were typed. */
function lengthIn(text: string, from: LengthSystem, to: LengthSystem): string {
  if (text.trim() === '') return text;
  try {
    const value = readValue(valueField('value', '', 'length', false), text.trim(), from);
    return isFormula(value) ? text : lengthText(String(value), to);
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    return text;
  }
}

function rewritten(row: GridRow, paths: readonly string[], from: LengthSystem, to: LengthSystem): GridRow {
  const lengths = paths
    .filter((path) => row.cells[path] !== undefined)
    .map((path) => [path, lengthIn(row.cells[path] ?? '', from, to)] as const);
  return { ...row, cells: { ...row.cells, ...Object.fromEntries(lengths) } };
}

/** Parameters and variants with their lengths written in the other system. */
export function parametersInSystem(
  { parameters, variants, unitSystem }: ParameterRows & { readonly unitSystem: LengthSystem },
  next: LengthSystem,
): ParameterRows {
  const lengths = parameters.filter((row) => kindOf(row) === 'length');
  return {
    parameters: parameters.map((row) =>
      kindOf(row) === 'length' ? rewritten(row, ['value', 'least', 'greatest'], unitSystem, next) : row,
    ),
    variants: variants.map((row) => rewritten(row, lengths.map(variantPath), unitSystem, next)),
  };
}
