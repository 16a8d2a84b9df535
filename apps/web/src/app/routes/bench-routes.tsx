import { createRoute, Link } from '@tanstack/react-router';
import { Section, Sheet, SheetHeader } from '../../components/sheet.tsx';
import { INDEX_ENTRIES } from '../index-entries.ts';
import { shellRoute } from '../shell-route.tsx';

function BenchScreen() {
  return (
    <Sheet>
      <SheetHeader title="Bench" />
      <Section title="Where to go on">
        <dl className="bench-list">
          {INDEX_ENTRIES.filter(({ to }) => to !== '/').map(({ to, label, purpose, isServed }) => (
            <div key={to}>
              <dt>{isServed ? <a href={to}>{label}</a> : <Link to={to}>{label}</Link>}</dt>
              <dd>{purpose}</dd>
            </div>
          ))}
        </dl>
      </Section>
    </Sheet>
  );
}

export const benchRoute = createRoute({
  getParentRoute: () => shellRoute,
  path: '/',
  component: BenchScreen,
});
