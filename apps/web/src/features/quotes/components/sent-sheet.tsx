import { sendQuote } from '@scantling/contracts';
import { allows } from '@scantling/quoting';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { RemoveAct } from '../../../components/record-editor/remove-act.tsx';
import { Section } from '../../../components/sheet.tsx';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { pictureAddress } from '../../../lib/upload-picture.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { totalsWith } from '../../client-document/chosen-lines.ts';
import { ClientDocumentView } from '../../client-document/client-document.tsx';
import { differenceTables } from '../../cost-difference/difference-tables.ts';
import { Figures } from '../../figures/figures.tsx';
import { mergeTables } from '../../figures/merge-tables.ts';
import { PaperLink } from '../../papers/paper-link.tsx';
import type { Quote, Revision } from '../api/get-quote.ts';
import { useAddToQuote, useReviseQuote, useWithdrawQuote } from '../api/quote-acts.ts';
import { comparisonQuery, frozenFiguresQuery } from '../api/work-out-quote.ts';
import { AnswerByHand, AnswerGiven } from './answer-section.tsx';
import { FrozenSheets } from './frozen-sheets.tsx';
import { LinkSection } from './link-section.tsx';
import { MovedSection } from './moved-section.tsx';
import { Reckoning } from './reckoning.tsx';
import { ContractSection } from './revisions-section.tsx';
import type { Sent } from './send-section.tsx';
import './quote.css';

interface SentSheetProps {
  readonly quote: Quote;
  readonly revision: Revision;
  readonly etag: string | null;
  /** What the sending answered, where it was sent just now. */
  readonly sent: Sent | null;
  readonly head: (actions: React.ReactNode) => React.ReactNode;
  readonly onGoTo: (revisionId: string) => void;
}

function Acts({ quote, revision, etag, onGoTo }: Omit<SentSheetProps, 'sent' | 'head'>) {
  const revise = useReviseQuote(revision.id);
  const add = useAddToQuote(quote.id);
  const withdraw = useWithdrawQuote(revision.id);
  const [key] = useState(newIdempotencyKey);
  const mayAct = useMayCall(sendQuote);
  const failed = revise.error ?? add.error;
  return (
    <>
      {revision.paperId !== null && (
        <PaperLink id={revision.paperId} isButton>
          The paper as sent (PDF)
        </PaperLink>
      )}
      {mayAct && allows(revision.state, 'revise') && (
        <Button
          isPending={revise.isPending}
          pendingText="Beginning ..."
          onPress={() => revise.mutate(key, { onSuccess: ({ value }) => onGoTo(value.id) })}
        >
          Revise
        </Button>
      )}
      {quote.contract && (
        <Link to="/quotes/$quoteId/money" params={{ quoteId: quote.id }} className="button button-plain">
          Money
        </Link>
      )}
      {quote.contract && (
        <Link
          to="/quotes/$quoteId/delivery-notes"
          params={{ quoteId: quote.id }}
          className="button button-plain"
        >
          Delivery notes
        </Link>
      )}
      {mayAct && revision.series === 0 && allows(revision.state, 'add') && (
        <Button
          isPending={add.isPending}
          pendingText="Beginning ..."
          onPress={() => add.mutate(key, { onSuccess: ({ value }) => onGoTo(value.id) })}
        >
          Make an addition
        </Button>
      )}
      {mayAct && allows(revision.state, 'withdraw') && (
        <RemoveAct
          act="Withdraw"
          title="Withdraw what was sent?"
          consequence="The client's link says so from then on. You can revise it and send it again."
          isPending={withdraw.isPending}
          error={withdraw.error}
          onRemove={() => withdraw.mutate(etag)}
        />
      )}
      {failed !== null && <ErrorNotice error={failed} />}
    </>
  );
}

/** What was sent, frozen: the client's document, how it was answered, what it leaves us then and today. */
export function SentSheet({ quote, revision, etag, sent, head, onGoTo }: SentSheetProps) {
  const frozen = useQuery(frozenFiguresQuery(revision.id));
  const comparison = useQuery(comparisonQuery(revision.id));
  const [chosen, setChosen] = useState<readonly string[]>(revision.acceptance?.chosen ?? []);
  const mayAct = useMayCall(sendQuote);
  const { document, acceptance } = revision;
  const taken = acceptance?.chosen ?? chosen;
  const isOpen = allows(revision.state, 'accept');
  const table = mergeTables({
    sent: frozen.data?.figures,
    today: comparison.data?.figures,
    ...differenceTables(comparison.data?.difference),
    contract: quote.contract?.figures,
  });
  const body = (
    <>
      {head(<Acts quote={quote} revision={revision} etag={etag} onGoTo={onGoTo} />)}
      <AnswerGiven revision={revision} />
      {mayAct && (
        <LinkSection revisionId={revision.id} sent={sent} canRenew={allows(revision.state, 'renew-link')} />
      )}
      {frozen.isError && <ErrorNotice error={frozen.error} retry={() => void frozen.refetch()} />}
      {frozen.data && <Reckoning worked={frozen.data} of="sent" />}
      {frozen.data && quote.contract && (
        <ContractSection contract={quote.contract} revisions={quote.revisions} />
      )}
      {comparison.isPending && <Loading label="Comparing with today" />}
      {comparison.isError && <ErrorNotice error={comparison.error} retry={() => void comparison.refetch()} />}
      {frozen.data && comparison.data && <MovedSection today={comparison.data} />}
      <FrozenSheets revision={revision} />
      {mayAct && <AnswerByHand revision={revision} etag={etag} chosen={chosen} />}
      {document !== null && (
        <Section title="What the client has" note="as it was sent, word for word">
          <div className="quote-preview">
            <ClientDocumentView
              document={document}
              chosen={taken}
              totals={totalsWith(document, taken)}
              pictureAddress={pictureAddress}
              {...(isOpen ? { onChosen: setChosen } : {})}
            />
          </div>
        </Section>
      )}
    </>
  );
  return <Figures table={table}>{body}</Figures>;
}
