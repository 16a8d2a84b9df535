import { SheetHeader, type TitleBlockFact } from '../../../components/sheet.tsx';
import './gate.css';

interface GateProps {
  readonly title: string;
  readonly facts: readonly TitleBlockFact[];
  readonly children: React.ReactNode;
}

/** The small sheet in front of the workshop: signing in and setting up. */
export function Gate({ title, facts, children }: GateProps) {
  return (
    <main className="gate">
      <article className="sheet gate-sheet">
        <SheetHeader title={title} facts={facts} />
        {children}
      </article>
    </main>
  );
}
