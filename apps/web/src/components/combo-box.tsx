import { ComboBox as AriaComboBox, Button, Input } from 'react-aria-components';
import { type Choice, ChoiceList } from './choice-list.tsx';
import { FieldLabel, FieldNotes, type FieldProps } from './field.tsx';

export interface ComboBoxProps extends FieldProps {
  readonly choices: readonly Choice[];
  /** The chosen id; null: none. */
  readonly value: string | null;
  readonly onChange: (id: string | null) => void;
  /** Set where the server searches: the choices are then shown as they come, without filtering here. */
  readonly onSearch?: (text: string) => void;
  readonly isRequired?: boolean;
  readonly isDisabled?: boolean;
  readonly emptyText?: string;
}

/** One of many, found by typing. */
export function ComboBox({
  label,
  hint,
  error,
  isLabelHidden,
  choices,
  value,
  onChange,
  onSearch,
  emptyText = 'Nothing fits',
  ...rest
}: ComboBoxProps) {
  return (
    <AriaComboBox<Choice>
      {...rest}
      className="field"
      defaultItems={choices}
      {...(onSearch ? { items: choices, onInputChange: onSearch } : {})}
      value={value}
      onChange={(key) => onChange(key === null ? null : String(key))}
      isInvalid={error !== undefined}
      validationBehavior="aria"
      menuTrigger="focus"
      allowsEmptyCollection
    >
      <FieldLabel label={label} isLabelHidden={isLabelHidden} />
      <div className="field-box">
        <Input />
        <Button className="combo-button">
          <span aria-hidden="true" className="select-mark" />
        </Button>
      </div>
      <FieldNotes label={label} hint={hint} error={error} />
      <ChoiceList emptyText={emptyText} />
    </AriaComboBox>
  );
}
