import { Toolbar } from 'react-aria-components';
import { Button } from '../button.tsx';
import './edit-grid.css';

/** One act of a grid: a button, and the keys that do the same. */
export interface GridAct {
  readonly label: string;
  /** As `aria-keyshortcuts` spells it ("Control+D"). */
  readonly keys?: string;
  readonly onAct: () => void;
}

interface GridActsProps {
  readonly label: string;
  readonly acts: readonly GridAct[];
}

/** The acts of the grid that is worked in, in words. */
export function GridActs({ label, acts }: GridActsProps) {
  return (
    <Toolbar className="grid-acts" aria-label={label}>
      {acts.map(({ label: words, keys, onAct }) => (
        <Button
          key={words}
          look="quiet"
          onPress={onAct}
          {...(keys === undefined ? {} : { 'aria-keyshortcuts': keys })}
        >
          {words}
        </Button>
      ))}
    </Toolbar>
  );
}
