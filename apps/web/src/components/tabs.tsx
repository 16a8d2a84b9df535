import { Tabs as AriaTabs, Tab, TabList, TabPanel } from 'react-aria-components';
import './tabs.css';

export interface TabItem {
  readonly id: string;
  readonly label: string;
  readonly content: React.ReactNode;
}

export interface TabsProps {
  /** Names the row of tabs. */
  readonly label: string;
  readonly items: readonly TabItem[];
  readonly selected?: string;
  readonly onSelect?: (id: string) => void;
}

/** Parts of one sheet; only the open one is in the page. */
export function Tabs({ label, items, selected, onSelect }: TabsProps) {
  return (
    <AriaTabs
      className="tabs"
      {...(selected === undefined ? {} : { selectedKey: selected })}
      onSelectionChange={(key) => onSelect?.(String(key))}
    >
      <TabList aria-label={label} className="tab-list">
        {items.map((item) => (
          <Tab key={item.id} id={item.id} className="tab">
            {item.label}
          </Tab>
        ))}
      </TabList>
      {items.map((item) => (
        <TabPanel key={item.id} id={item.id} className="tab-panel">
          {item.content}
        </TabPanel>
      ))}
    </AriaTabs>
  );
}
