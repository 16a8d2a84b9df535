import type { WorkedCostSheet } from '@scantling/contracts';
import { Link } from '@tanstack/react-router';
import { Section } from '../../../components/sheet.tsx';
import { RecordLink } from '../../figures/record-link.tsx';
import { piecesWords } from './class-rows.ts';
import './cost-sheet.css';

type Notice = WorkedCostSheet['notices'][number];

const WEIGHT_WORDS: Readonly<Record<Notice['weight'], string>> = {
  missing: 'Missing',
  warning: 'Mind',
  caution: 'Caution',
};

/** What to know before relying on the sheet; nothing where there is nothing to say. */
export function NoticeList({ worked }: { readonly worked: WorkedCostSheet }) {
  const { notices, columns, isComplete } = worked;
  if (notices.length === 0) return null;
  return (
    <Section
      title="What to know"
      note={isComplete ? '' : 'Cost and price are too low: something in them has no price.'}
    >
      <ul className="sheet-notices">
        {notices.map((notice) => (
          <li key={`${notice.kind} ${notice.about} ${notice.message}`} data-weight={notice.weight}>
            <strong>{WEIGHT_WORDS[notice.weight]}</strong> {sentence(notice.message)}
            {notice.quantities.length < columns.length &&
              ` At ${notice.quantities.map((quantity) => piecesWords(quantity)).join(', ')}.`}{' '}
            <span className="notice-mend">
              {sentence(notice.mend)} <RecordLink record={notice.record}>{notice.about}</RecordLink>
              {notice.kind === 'no-price' && (
                <>
                  {', '}
                  <Link to="/price-lists/articles" search={{ linked: 'no' }}>
                    articles linked to no material
                  </Link>
                </>
              )}
            </span>
          </li>
        ))}
      </ul>
    </Section>
  );
}

function sentence(text: string): string {
  const first = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(first) ? first : `${first}.`;
}
