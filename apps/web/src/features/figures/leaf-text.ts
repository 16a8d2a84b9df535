import { type EnteredLeaf, leafEntry, leafValueProblem } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import type { FigureNode } from '@scantling/figures';
import { type LengthSystem, parseLength, UnreadableLengthError, unitWords } from '@scantling/units';
import type { FieldMessage } from '../../components/field.tsx';
import { formatAmount } from '../../lib/format.ts';
import { lengthText } from '../../lib/length-text.ts';
import { fromPercent, plainDecimal, toPercent } from '../../lib/percent.ts';

type Leaf = Pick<FigureNode, 'id' | 'label' | 'unit' | 'currency' | 'source'>;

function entered({ id, unit, source }: Leaf): EnteredLeaf {
  return source === undefined ? { id, unit } : { id, unit, source };
}

/** True where another value can be tried. */
export function canTry(leaf: Leaf): boolean {
  return leafEntry(entered(leaf)) !== null;
}

/** True for what is read and entered as a percentage. */
export function isShare(leaf: Leaf): boolean {
  return leafEntry(entered(leaf))?.as === 'share';
}

/** A value of a leaf as it stands in a field: a share as a percentage, a length exactly in the system. */
export function leafText(leaf: Leaf, value: string, system: LengthSystem): string {
  if (isShare(leaf)) return toPercent(value);
  return leaf.unit === 'mm' ? lengthText(value, system) : value;
}

/** The unit beside the field. */
export function leafSuffix(leaf: Leaf, system: LengthSystem): string {
  if (isShare(leaf)) return '%';
  if (leaf.unit === 'mm') return system === 'metric' ? 'mm' : '';
  const unit = leaf.unit === 'money' ? '' : unitWords(leaf.unit);
  return [leaf.currency ?? '', unit].filter((word) => word !== '').join(' ');
}

/** A value of a leaf as it is read: "62 %", "23 5/8″", "$15.16 per bd ft". */
export function leafWords(leaf: Leaf, value: string, system: LengthSystem, locale: string): string {
  if (isShare(leaf)) return `${toPercent(value)} %`;
  if (leaf.unit === 'mm') return system === 'metric' ? `${value} mm` : lengthText(value, system);
  return formatAmount({ ...leaf, value }, { locale }).text;
}

export type ReadLeaf = { readonly value: string } | { readonly problem: FieldMessage };

function unreadable(typed: string, mend: string): ReadLeaf {
  return { problem: { message: `cannot be “${typed}”`, mend } };
}

/** What was typed as a value of the leaf, or why it cannot stand there. */
export function readLeaf(leaf: Leaf, typed: string, system: LengthSystem): ReadLeaf {
  const text = typed.trim();
  let value = isShare(leaf) ? fromPercent(text.replace(/\s*%$/, '')) : plainDecimal(text);
  if (leaf.unit === 'mm') {
    try {
      value = parseLength(text, system === 'metric' ? 'mm' : 'in').toFixed();
    } catch (error) {
      if (!(error instanceof UnreadableLengthError)) throw error;
      return unreadable(text, 'Write it like 600, 60 cm, 23 5/8" or 1\' 11 5/8".');
    }
  }
  if (!/^-?\d{1,12}(\.\d{1,12})?$/.test(value)) return unreadable(text, 'Write a number, such as 12.5.');
  const problem = leafValueProblem(entered(leaf), value);
  return problem === null ? { value: decimal(value).toFixed() } : { problem };
}
