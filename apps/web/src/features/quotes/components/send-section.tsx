import type { AnswerOf, sendQuote } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import { pictureAddress } from '../../../lib/upload-picture.ts';
import { ClientDocumentView } from '../../client-document/client-document.tsx';
import type { Revision } from '../api/get-quote.ts';
import { useSendQuote } from '../api/quote-acts.ts';
import { previewPaperAddress, previewQuery } from '../api/work-out-quote.ts';
import './quote.css';

export type Sent = Pick<AnswerOf<typeof sendQuote>, 'id' | 'linkPath' | 'mailTo'>;

interface SendSectionProps {
  readonly revision: Revision;
  readonly etag: string | null;
  readonly isChanged: boolean;
  readonly isWhole: boolean;
  readonly onSent: (sent: Sent) => void;
}

function Preview({ revision, etag, onSent }: Pick<SendSectionProps, 'revision' | 'etag' | 'onSent'>) {
  const preview = useQuery(previewQuery(revision.id, etag));
  const send = useSendQuote(revision.id);
  if (preview.isPending) return <Loading label="Setting it out" />;
  if (preview.isError) return <ErrorNotice error={preview.error} retry={() => void preview.refetch()} />;
  const { document, mailTo } = preview.data;
  return (
    <>
      <p>
        {mailTo === null
          ? 'This client has no e-mail address: you get a link to hand over yourself.'
          : `A mail with the link and the paper goes to ${mailTo}.`}{' '}
        Once sent it can no longer be changed, only replaced by a revision.
      </p>
      <div className="quote-acts">
        <Button
          look="main"
          isPending={send.isPending}
          pendingText="Sending ..."
          onPress={() =>
            // Once sent the draft's screen gives way, and the link must still be told; a failure is shown below.
            void send.mutateAsync(etag).then(
              ({ value }) => onSent(value),
              () => undefined,
            )
          }
        >
          Send it to {document.client.name}
        </Button>
        <a
          className="button button-plain"
          href={previewPaperAddress(revision.id)}
          target="_blank"
          rel="noreferrer"
        >
          See the paper (PDF)
        </a>
      </div>
      {send.isError && <ErrorNotice error={send.error} />}
      <div className="quote-preview">
        <ClientDocumentView
          document={document}
          chosen={[]}
          totals={document.totals}
          pictureAddress={pictureAddress}
        />
      </div>
    </>
  );
}

/** What the client gets, seen before it is sent, and the one act that sends it. */
export function SendSection({ revision, etag, isChanged, isWhole, onSent }: SendSectionProps) {
  const [isShown, setIsShown] = useState(false);
  const waits = !isWhole ? 'Add a line first.' : isChanged ? 'Save the draft first.' : null;
  return (
    <Section title="What the client gets" note="the paper and the page behind the link">
      {waits !== null ? (
        <p className="quiet">{waits}</p>
      ) : isShown ? (
        <Preview key={etag} revision={revision} etag={etag} onSent={onSent} />
      ) : (
        <div>
          <Button look="main" onPress={() => setIsShown(true)}>
            See it and send it
          </Button>
        </div>
      )}
    </Section>
  );
}
