import { Select as AriaSelect, Button, SelectValue } from 'react-aria-components';
import { type Choice, ChoiceList } from './choice-list.tsx';
import { FieldLabel, FieldNotes, type FieldProps } from './field.tsx';

export interface SelectProps extends FieldProps {
  readonly choices: readonly Choice[];
  /** The chosen id; null: none yet. */
  readonly value: string | null;
  readonly onChange: (id: string) => void;
  readonly isRequired?: boolean;
  readonly isDisabled?: boolean;
  readonly emptyText?: string;
}

/** One of a few; for more than about twelve use `ComboBox`. */
export function Select({
  label,
  hint,
  error,
  isLabelHidden,
  choices,
  value,
  onChange,
  emptyText = 'Choose',
  ...rest
}: SelectProps) {
  return (
    <AriaSelect
      {...rest}
      className="field"
      value={value}
      onChange={(key) => {
        if (key !== null) onChange(String(key));
      }}
      isInvalid={error !== undefined}
      validationBehavior="aria"
      placeholder={emptyText}
    >
      <FieldLabel label={label} isLabelHidden={isLabelHidden} />
      <div className="field-box">
        <Button className="select-button">
          <SelectValue<Choice> className="select-value">
            {({ selectedItem, defaultChildren }) => selectedItem?.label ?? defaultChildren}
          </SelectValue>
          <span aria-hidden="true" className="select-mark" />
        </Button>
      </div>
      <FieldNotes label={label} hint={hint} error={error} />
      <ChoiceList choices={choices} />
    </AriaSelect>
  );
}
