import { FieldError, Label, Text } from 'react-aria-components';
import { sentence } from '../lib/sentence.ts';
import './field.css';

/** What is wrong with a field and how to mend it; the shape of an API problem's `errors`. */
export interface FieldMessage {
  readonly message: string;
  readonly mend?: string | undefined;
}

/** What every field takes. */
export interface FieldProps {
  readonly label: string;
  /** One line below: what is meant, in which unit, an example. */
  readonly hint?: string | undefined;
  readonly error?: FieldMessage | undefined;
  /** For fields in table cells, where the head is the label; it is still read out. */
  readonly isLabelHidden?: boolean | undefined;
}

export function FieldLabel({ label, isLabelHidden }: Pick<FieldProps, 'label' | 'isLabelHidden'>) {
  return <Label className={isLabelHidden ? 'visually-hidden' : 'field-label'}>{label}</Label>;
}

/** Hint and error; stands inside the component library's field, which ties both to the control. */
export function FieldNotes({ label, hint, error }: Pick<FieldProps, 'label' | 'hint' | 'error'>) {
  return (
    <>
      {hint !== undefined && (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      )}
      {error !== undefined && (
        <FieldError className="field-error">
          <strong>{sentence(label, error.message)}</strong>
          {error.mend !== undefined && <> {error.mend}</>}
        </FieldError>
      )}
    </>
  );
}

/** Lays fields out in columns as wide as fit; a `legend` names the group. */
export function FieldGroup({
  legend,
  children,
}: {
  readonly legend?: string;
  readonly children: React.ReactNode;
}) {
  return (
    <fieldset className="field-group">
      {legend !== undefined && <legend>{legend}</legend>}
      <div className="field-grid">{children}</div>
    </fieldset>
  );
}
