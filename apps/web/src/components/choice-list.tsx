import { ListBox, ListBoxItem, Popover } from 'react-aria-components';
import './choice-list.css';

export interface Choice {
  readonly id: string;
  readonly label: string;
  /** Second line: what tells this choice from its neighbours. */
  readonly note?: string | undefined;
}

interface ChoiceListProps {
  /** Absent inside a combo box, which hands its own filtered items down. */
  readonly choices?: readonly Choice[];
  readonly emptyText?: string;
}

/** The list that drops from a select or combo box. */
export function ChoiceList({ choices, emptyText = 'Nothing fits' }: ChoiceListProps) {
  return (
    <Popover className="choice-popover" offset={2}>
      <ListBox<Choice>
        {...(choices ? { items: choices } : {})}
        className="choice-list"
        renderEmptyState={() => <p className="choice-none">{emptyText}</p>}
      >
        {(choice) => (
          <ListBoxItem id={choice.id} textValue={choice.label} className="choice">
            <span className="choice-label">{choice.label}</span>
            {choice.note !== undefined && <span className="choice-note">{choice.note}</span>}
          </ListBoxItem>
        )}
      </ListBox>
    </Popover>
  );
}
