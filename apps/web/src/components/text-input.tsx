import {
  TextField as AriaTextField,
  type TextFieldProps as AriaTextFieldProps,
  Input,
  TextArea,
} from 'react-aria-components';
import { FieldLabel, FieldNotes, type FieldProps } from './field.tsx';

export interface TextInputProps
  extends FieldProps,
    Omit<AriaTextFieldProps, 'children' | 'className' | 'style' | 'isInvalid' | 'validate' | 'type'> {
  readonly type?: 'text' | 'email' | 'password' | 'search' | 'date' | 'url';
  /** Aligned as figures are, with the number keys on phones; the value stays text, so no digit is lost. */
  readonly isNumeric?: boolean;
  /** Unit or currency beside the value. */
  readonly suffix?: string;
  /** Several lines. */
  readonly isMultiline?: boolean;
}

const FEWEST_ROWS = 3;
const MOST_ROWS = 20;

/** As many rows as the text has lines, and one to go on writing. */
function rowsFor(text = ''): number {
  return Math.min(MOST_ROWS, Math.max(FEWEST_ROWS, text.split('\n').length + 1));
}

export function TextInput({
  label,
  hint,
  error,
  isLabelHidden,
  isNumeric = false,
  suffix,
  isMultiline = false,
  type = 'text',
  ...rest
}: TextInputProps) {
  return (
    <AriaTextField
      {...rest}
      type={type}
      className="field"
      isInvalid={error !== undefined}
      validationBehavior="aria"
    >
      <FieldLabel label={label} isLabelHidden={isLabelHidden} />
      <div className="field-box">
        {isMultiline ? (
          <TextArea rows={rowsFor(rest.value)} />
        ) : (
          <Input
            {...(isNumeric ? { inputMode: 'decimal' as const } : {})}
            data-is-numeric={isNumeric ? '' : undefined}
          />
        )}
        {suffix !== undefined && <span className="field-suffix">{suffix}</span>}
      </div>
      <FieldNotes label={label} hint={hint} error={error} />
    </AriaTextField>
  );
}
