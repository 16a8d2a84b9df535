import { Link, useRouterState } from '@tanstack/react-router';
import { Fragment, useId, useState } from 'react';
import { INDEX_ENTRIES, type IndexEntry } from './index-entries.ts';
import './index-strip.css';

function EntryLink({ entry, onFollow }: { readonly entry: IndexEntry; readonly onFollow: () => void }) {
  if (entry.isServed) return <a href={entry.to}>{entry.label}</a>;
  return (
    <Link to={entry.to} activeOptions={{ exact: entry.to === '/', includeSearch: false }} onClick={onFollow}>
      {entry.label}
    </Link>
  );
}

function labelOf(path: string): string {
  const found = INDEX_ENTRIES.filter(({ to }) => (to === '/' ? path === '/' : path.startsWith(to)));
  return found.at(-1)?.label ?? 'Index';
}

interface IndexStripProps {
  /** What stands at the end of the strip: theme, person. */
  readonly children: React.ReactNode;
}

/** The screens in words, by group. On a phone: one button at the bottom edge that opens the same list. */
export function IndexStrip({ children }: IndexStripProps) {
  const [isOpen, setIsOpen] = useState(false);
  const list = useId();
  const path = useRouterState({ select: (state) => state.location.pathname });
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
        <strong>{labelOf(path)}</strong>
      </button>
      <div className="index-sheet" id={list}>
        <nav aria-label="Index">
          <ul>
            {INDEX_ENTRIES.map((entry, at) => (
              <Fragment key={entry.to}>
                {at > 0 && entry.group !== INDEX_ENTRIES[at - 1]?.group && (
                  <li aria-hidden="true" className="index-rule" />
                )}
                <li>
                  <EntryLink entry={entry} onFollow={() => setIsOpen(false)} />
                </li>
              </Fragment>
            ))}
          </ul>
        </nav>
        <div className="index-end">{children}</div>
      </div>
    </header>
  );
}
