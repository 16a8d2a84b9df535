import { ErrorNotice } from '../../../components/notices.tsx';
import { ApiProblem, type FieldError } from '../../../lib/api-problem.ts';
import { fieldErrors } from '../../../lib/field-errors.ts';
import type { FieldParts } from './field-parts.ts';
import { PolicyFields } from './policy-fields.tsx';
import { OrderFields, SheetFields } from './sheet-fields.tsx';
import './cost-sheet.css';

const SHOWN = [
  'title',
  'designId',
  'clientId',
  'basis',
  'onDate',
  'quantities',
  'terms.promisedDate',
  'terms.overheadAt',
  'terms.freight',
  'terms.contingency',
  'terms.quotingHours',
  'terms.buyingHours',
  'terms.deliveryHours',
  'terms.discount',
  'terms.policy',
  'terms.policy.kind',
  'terms.policy.markup',
  'terms.policy.materials',
  'terms.policy.labour',
  'terms.policy.machines',
  'terms.policy.other',
  'terms.policy.margin',
  'terms.policy.perHour',
  'terms.policy.price',
  'terms.policy.per',
  'terms.priceStep.to',
];

export interface SheetFormProps extends Omit<FieldParts, 'errorFor'> {
  /** What this page found wrong with what was typed. */
  readonly found: readonly FieldError[];
  /** What the API answered to the last try. */
  readonly error: unknown;
  /** What working it out failed on, said elsewhere on the sheet; its fields are marked here. */
  readonly workError?: unknown;
  readonly onSubmit: () => void;
  /** The acts, and what is said beside them. */
  readonly children: React.ReactNode;
}

/** The whole form of a cost sheet: a new one's and a saved one's. */
export function SheetForm({ found, error, workError, onSubmit, children, ...rest }: SheetFormProps) {
  const refused = fieldErrors(error, SHOWN);
  const unworkable = fieldErrors(workError, SHOWN);
  const parts: FieldParts = {
    ...rest,
    errorFor: (field) =>
      found.find((one) => one.field === field) ?? refused.errorFor(field) ?? unworkable.errorFor(field),
  };
  const isPlaced = error instanceof ApiProblem && error.errors.length > 0 && refused.unplaced.length === 0;
  return (
    <form
      className="sheet-form"
      onSubmit={(event) => {
        event.preventDefault();
        onSubmit();
      }}
    >
      {error !== null && !isPlaced && <ErrorNotice error={error} errors={refused.unplaced} />}
      <SheetFields {...parts} />
      <OrderFields {...parts} />
      <PolicyFields {...parts} />
      <div className="form-foot">
        {children}
        {found.length > 0 && <p role="alert">Nothing was saved: {found.length} to mend above.</p>}
      </div>
    </form>
  );
}
