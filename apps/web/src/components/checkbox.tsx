import { Checkbox as AriaCheckbox, type CheckboxProps as AriaCheckboxProps } from 'react-aria-components';
import './switches.css';

export interface CheckboxProps extends Omit<AriaCheckboxProps, 'className' | 'style' | 'children'> {
  readonly label: string;
  readonly isLabelHidden?: boolean;
}

export function Checkbox({ label, isLabelHidden = false, ...rest }: CheckboxProps) {
  return (
    <AriaCheckbox {...rest} className="checkbox">
      {({ isIndeterminate, isSelected }) => (
        <>
          <span aria-hidden="true" className="checkbox-box">
            {isIndeterminate ? '–' : isSelected ? '✓' : ''}
          </span>
          <span className={isLabelHidden ? 'visually-hidden' : undefined}>{label}</span>
        </>
      )}
    </AriaCheckbox>
  );
}
