import { Link, useRouterState } from '@tanstack/react-router';
import { useId, useState } from 'react';
import { ENTRY_GROUPS, INDEX_ENTRIES, type IndexEntry } from './index-entries.ts';
import './index-strip.css';
import '../components/choice-list.css';

function EntryLink({ entry, onFollow }: { readonly entry: IndexEntry; readonly onFollow: () => void }) {
  const words = (
    <>
      <span className="index-label">{entry.label}</span>
      {entry.group !== 'bench' && (
        <span className="index-purpose" aria-hidden="true">
          {entry.purpose}
        </span>
      )}
    </>
  );
  if (entry.isServed) return <a href={entry.to}>{words}</a>;
  return (
    <Link to={entry.to} activeOptions={{ exact: entry.to === '/', includeSearch: false }} onClick={onFollow}>
      {words}
    </Link>
  );
}

function entryAt(path: string): IndexEntry | undefined {
  return INDEX_ENTRIES.filter(({ to }) => (to === '/' ? path === '/' : path.startsWith(to))).at(-1);
}

type OpeningGroup = keyof typeof ENTRY_GROUPS;
const GROUPS: readonly OpeningGroup[] = ['work', 'selling', 'prices', 'rates', 'workshop'];

interface GroupProps {
  readonly group: OpeningGroup;
  /** The screen that is open, where it is one of this group. */
  readonly current: IndexEntry | undefined;
  readonly isOpen: boolean;
  readonly onOpenChange: (isOpen: boolean) => void;
  readonly onFollow: () => void;
}

/** A word on the strip that opens the list of its screens (disclosure pattern of the ARIA practices). */
function Group({ group, current, isOpen, onOpenChange, onFollow }: GroupProps) {
  const list = useId();
  const label = ENTRY_GROUPS[group];
  return (
    <li
      className="index-group"
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !isOpen) return;
        onOpenChange(false);
        event.currentTarget.querySelector('button')?.focus();
      }}
      onBlur={(event) => {
        if (isOpen && !event.currentTarget.contains(event.relatedTarget)) onOpenChange(false);
      }}
    >
      <button
        type="button"
        className="group-button"
        aria-expanded={isOpen}
        aria-controls={list}
        data-is-current={current ? '' : undefined}
        onClick={() => onOpenChange(!isOpen)}
      >
        {label}
        {current && <span className="group-current">{current.label}</span>}
        <span aria-hidden="true" className="select-mark" />
      </button>
      <span className="group-name">{label}</span>
      <ul id={list} aria-label={label} data-is-open={isOpen ? '' : undefined}>
        {INDEX_ENTRIES.filter((entry) => entry.group === group).map((entry) => (
          <li key={entry.to}>
            <EntryLink entry={entry} onFollow={onFollow} />
          </li>
        ))}
      </ul>
    </li>
  );
}

interface IndexStripProps {
  /** What stands at the end of the strip: theme, person. */
  readonly children: React.ReactNode;
}

/** The screens in words, by group. On a phone: one button at the bottom edge that opens them all. */
export function IndexStrip({ children }: IndexStripProps) {
  const [isOpen, setIsOpen] = useState(false);
  const [openGroup, setOpenGroup] = useState<OpeningGroup | null>(null);
  const list = useId();
  const path = useRouterState({ select: (state) => state.location.pathname });
  const current = entryAt(path);
  const close = (): void => {
    setIsOpen(false);
    setOpenGroup(null);
  };
  return (
    <header className="index-strip" data-is-open={isOpen ? '' : undefined}>
      <button
        type="button"
        className="index-button"
        aria-expanded={isOpen}
        aria-controls={list}
        onClick={() => setIsOpen(!isOpen)}
        onKeyDown={(event) => {
          if (event.key === 'Escape') setIsOpen(false);
        }}
      >
        <span>Index</span>
        <strong>{current?.label ?? 'Index'}</strong>
      </button>
      <div className="index-sheet" id={list}>
        <nav aria-label="Index">
          <ul className="index-groups">
            {INDEX_ENTRIES.filter(({ group }) => group === 'bench').map((entry) => (
              <li key={entry.to}>
                <EntryLink entry={entry} onFollow={close} />
              </li>
            ))}
            {GROUPS.map((group) => (
              <Group
                key={group}
                group={group}
                current={current?.group === group ? current : undefined}
                isOpen={openGroup === group}
                onOpenChange={(open) => setOpenGroup(open ? group : null)}
                onFollow={close}
              />
            ))}
          </ul>
        </nav>
        <div className="index-end">{children}</div>
      </div>
    </header>
  );
}
