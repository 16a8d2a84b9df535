import { Link } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import { RuledFrame } from '../../../components/ruled-frame.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney } from '../../../lib/format.ts';
import { FigureValue } from '../../figures/figure-value.tsx';
import { mergedId } from '../../figures/merge-tables.ts';
import { PaperLink } from '../../papers/paper-link.tsx';
import type { Quote } from '../api/get-quote.ts';
import { momentWords, STATE_WORDS } from './state-words.ts';
import '../../client-document/client-document.css';
import './quote.css';

interface ContractSectionProps {
  readonly contract: NonNullable<Quote['contract']>;
  readonly revisions: Quote['revisions'];
}

/** Original and accepted additions: what is agreed in all. */
export function ContractSection({ contract, revisions }: ContractSectionProps) {
  const titleOf = (revisionId: string): string => {
    const title = revisions.find(({ id }) => id === revisionId)?.title;
    return title === undefined ? '' : `, ${title}`;
  };
  return (
    <Section title="Agreed in all" note="the original and every accepted addition, with tax">
      <dl className="offer-totals">
        {contract.parts.map((part) => (
          <div key={part.revisionId}>
            <dt>
              {`${part.kind === 'quote' ? 'Quote' : 'Addition'} ${part.number}${titleOf(part.revisionId)}`}
            </dt>
            <dd>
              <FigureValue id={mergedId('contract', part.total)} />
            </dd>
          </div>
        ))}
        <div className="offer-total">
          <dt>Sum of the contract</dt>
          <dd>
            <FigureValue id={mergedId('contract', contract.total)} look="total" />
          </dd>
        </div>
      </dl>
    </Section>
  );
}

/** Every revision and addition of the quote with its state and paper. */
export function RevisionsSection({ quote, shownId }: { readonly quote: Quote; readonly shownId: string }) {
  const { locale } = useLocale();
  return (
    <Section title="Revisions and additions" note="what was sent stays as it was">
      <RuledFrame label="Revisions and additions">
        <table className="ruled-rows">
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">State</th>
              <th scope="col">Sent</th>
              <th scope="col" className="numeric">
                Total with tax
              </th>
              <th scope="col">Paper</th>
            </tr>
          </thead>
          <tbody>
            {quote.revisions.map((one) => {
              const name =
                one.kind === 'quote'
                  ? `Revision ${one.revision}`
                  : `Addition ${one.series}, revision ${one.revision}: ${one.title}`;
              return (
                <tr key={one.id}>
                  <th scope="row">
                    {one.id === shownId ? (
                      <strong>{name}, shown</strong>
                    ) : (
                      <Link
                        to="/quotes/$quoteId"
                        params={{ quoteId: quote.id }}
                        search={{ revision: one.id }}
                      >
                        {name}
                      </Link>
                    )}
                  </th>
                  <td>{STATE_WORDS[one.state]}</td>
                  <td>{one.sentAt === null ? 'not yet' : momentWords(one.sentAt)}</td>
                  <td className="numeric">
                    {one.total === null ? '–' : formatMoney(one.total, quote.currency, { locale })}
                  </td>
                  <td>{one.paperId === null ? '–' : <PaperLink id={one.paperId}>{one.number}</PaperLink>}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </RuledFrame>
    </Section>
  );
}
