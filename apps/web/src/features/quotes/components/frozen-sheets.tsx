import { downloadQuoteLine } from '@scantling/contracts';
import { Section } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { lineWorkbookAddress } from '../api/download-quote-line.ts';
import type { Revision } from '../api/get-quote.ts';

/** The cost sheets behind what was sent, each as a spreadsheet; they are the owner's alone. */
export function FrozenSheets({ revision }: { readonly revision: Revision }) {
  const mayDownload = useMayCall(downloadQuoteLine);
  const lines = revision.draft.lines.filter(({ kind }) => kind === 'cost-sheet');
  if (!mayDownload || lines.length === 0) return null;
  return (
    <Section title="Cost sheets behind it" note="as they were frozen, with a formula for every number">
      {lines.map(({ id, description }) => (
        <p key={id}>
          <a href={lineWorkbookAddress(revision.id, id)} download>
            {description} (XLSX)
          </a>
        </p>
      ))}
    </Section>
  );
}
