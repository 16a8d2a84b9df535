import { Menu as AriaMenu, Button, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import './menu.css';
import './choice-list.css';

export interface MenuAct {
  readonly id: string;
  readonly label: string;
  readonly onAct: () => void;
  readonly isDisabled?: boolean;
}

export interface MenuProps {
  /** The words on the button. */
  readonly label: string;
  readonly acts: readonly MenuAct[];
  readonly look?: 'plain' | 'quiet';
}

export function Menu({ label, acts, look = 'plain' }: MenuProps) {
  return (
    <MenuTrigger>
      <Button className={`button button-${look} menu-button`}>
        <span>{label}</span>
        <span aria-hidden="true" className="select-mark" />
      </Button>
      <Popover className="choice-popover" offset={2} placement="bottom end">
        <AriaMenu className="choice-list" onAction={(key) => acts.find((act) => act.id === key)?.onAct()}>
          {acts.map((act) => (
            <MenuItem key={act.id} id={act.id} className="choice" isDisabled={act.isDisabled ?? false}>
              {act.label}
            </MenuItem>
          ))}
        </AriaMenu>
      </Popover>
    </MenuTrigger>
  );
}
