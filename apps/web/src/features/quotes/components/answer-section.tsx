import { allows } from '@scantling/quoting';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import type { Revision } from '../api/get-quote.ts';
import { useAcceptQuote, useDeclineQuote } from '../api/quote-acts.ts';
import { momentWords } from './state-words.ts';
import './quote.css';

interface AnswerProps {
  readonly revision: Revision;
  readonly etag: string | null;
  /** Options and alternates taken, as marked in the document below. */
  readonly chosen: readonly string[];
}

/** Writes down what a client said on paper, by phone or by mail. */
export function AnswerByHand({ revision, etag, chosen }: AnswerProps) {
  const [answer, setAnswer] = useState<'none' | 'yes' | 'no'>('none');
  const [name, setName] = useState(revision.clientName);
  const [how, setHow] = useState('by phone');
  const [reason, setReason] = useState('');
  const accept = useAcceptQuote(revision.id);
  const decline = useDeclineQuote(revision.id);
  const { errorFor, unplaced } = fieldErrors(accept.error, ['name', 'how']);
  const mayAccept = allows(revision.state, 'accept');
  if (!mayAccept && !allows(revision.state, 'decline')) return null;
  return (
    <Section title="What the client said" note="where it was not said by the link">
      {answer === 'none' && (
        <div className="quote-acts">
          {mayAccept && <Button onPress={() => setAnswer('yes')}>The client accepted</Button>}
          <Button onPress={() => setAnswer('no')}>The client declined</Button>
        </div>
      )}
      {answer === 'yes' && (
        <>
          <p>Mark in the document below what was chosen; it is kept with the acceptance.</p>
          <FieldGroup>
            <TextInput label="Who accepted" value={name} onChange={setName} error={errorFor('name')} />
            <TextInput
              label="How"
              hint="by phone, on paper, by mail"
              value={how}
              onChange={setHow}
              error={errorFor('how')}
            />
          </FieldGroup>
          {accept.isError && <ErrorNotice error={accept.error} errors={unplaced} />}
          <div className="quote-acts">
            <Button
              look="main"
              isPending={accept.isPending}
              pendingText="Writing down ..."
              onPress={() => accept.mutate({ body: { name, how, chosen: [...chosen] }, etag })}
            >
              Write down that it is accepted
            </Button>
            <Button onPress={() => setAnswer('none')}>Not yet</Button>
          </div>
        </>
      )}
      {answer === 'no' && (
        <>
          <TextInput label="Why, if it was said" value={reason} onChange={setReason} />
          {decline.isError && <ErrorNotice error={decline.error} />}
          <div className="quote-acts">
            <Button
              look="main"
              isPending={decline.isPending}
              pendingText="Writing down ..."
              onPress={() => decline.mutate({ reason, etag })}
            >
              Write down that it is declined
            </Button>
            <Button onPress={() => setAnswer('none')}>Not yet</Button>
          </div>
        </>
      )}
    </Section>
  );
}

/** How it was answered: by whom, when, and the hash of what was accepted. */
export function AnswerGiven({ revision }: { readonly revision: Revision }) {
  const { acceptance, decline } = revision;
  if (acceptance !== null)
    return (
      <div className="client-link">
        <p>
          <strong>
            Accepted by {acceptance.name} on {momentWords(acceptance.acceptedAt)}
          </strong>
          {acceptance.by.kind === 'link' ? ', by the link' : `, ${acceptance.by.how}, as written down here`}.
        </p>
        {acceptance.remark !== '' && <p>“{acceptance.remark}”</p>}
        <p>
          Hash of what was accepted: <code>{acceptance.acceptedHash}</code>
        </p>
      </div>
    );
  if (decline === null) return null;
  return (
    <p className="reckoning-warning">
      <strong>Declined on {momentWords(decline.declinedAt)}.</strong>{' '}
      {decline.reason === '' ? 'No reason was given.' : `“${decline.reason}”`}
    </p>
  );
}
