import type { LengthSystem } from '@scantling/units';
import '../../../components/field.css';
import './design.css';

const EXAMPLES = {
  metric: { length: '1200', leg: '40', comes: '1120' },
  imperial: { length: '48"', leg: '1 3/4"', comes: '44 1/2"' },
} as const;

/** How a size is written as a formula, with one worked out. */
export function FormulaHelp({ system }: { readonly system: LengthSystem }) {
  const { length, leg, comes } = EXAMPLES[system];
  return (
    <p className="field-hint formula-help">
      Any size, quantity or time below may be a sum over the ids of parameters, begun with "=". With length{' '}
      {length} and leg {leg}, <code>= length - 2 * leg</code> comes to {comes}. It may hold + - * /, brackets,
      min, max, floor, ceil, round and a condition: <code>= drawers &gt; 4 ? 600 : 500</code>.
    </p>
  );
}
