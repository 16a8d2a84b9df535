import { Switch as AriaSwitch, type SwitchProps as AriaSwitchProps } from 'react-aria-components';
import './switches.css';

export interface SwitchProps extends Omit<AriaSwitchProps, 'className' | 'style' | 'children'> {
  readonly label: string;
}

/** For what takes effect at once; a form that is saved uses `Checkbox`. */
export function Switch({ label, ...rest }: SwitchProps) {
  return (
    <AriaSwitch {...rest} className="switch">
      <span aria-hidden="true" className="switch-slot">
        <span className="switch-knob" />
      </span>
      <span>{label}</span>
    </AriaSwitch>
  );
}
