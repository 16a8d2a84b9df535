import { Link } from '@tanstack/react-router';
import { Section } from '../../components/sheet.tsx';
import { ENTRY_GROUPS, INDEX_ENTRIES } from '../index-entries.ts';
import './bench.css';

/** Every screen with its purpose, by group, as on the index strip. */
export function AllScreens() {
  return (
    <Section title="All screens">
      <div className="bench-groups">
        {Object.entries(ENTRY_GROUPS).map(([group, name]) => (
          <div key={group}>
            <h3>{name}</h3>
            <dl className="bench-list">
              {INDEX_ENTRIES.filter((entry) => entry.group === group).map(
                ({ to, label, purpose, isServed }) => (
                  <div key={to}>
                    <dt>{isServed ? <a href={to}>{label}</a> : <Link to={to}>{label}</Link>}</dt>
                    <dd>{purpose}</dd>
                  </div>
                ),
              )}
            </dl>
          </div>
        ))}
      </div>
    </Section>
  );
}
