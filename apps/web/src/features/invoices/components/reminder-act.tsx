import { remind } from '@scantling/contracts';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { useRemind } from '../api/invoice-acts.ts';
import type { Overdue } from '../api/list-overdue.ts';
import './invoice.css';

/** The proposed reminder, to change, mail or copy. */
export function ReminderAct({ overdue }: { readonly overdue: Overdue }) {
  const { invoice, mailTo } = overdue;
  const [text, setText] = useState(overdue.text);
  const [copied, setCopied] = useState<'not-yet' | 'copied' | 'by-hand'>('not-yet');
  const act = useRemind(invoice.id);
  const mayRemind = useMayCall(remind);
  const { errorFor, unplaced } = fieldErrors(act.error, ['text']);
  const copy = (): void => {
    // Browsers give no clipboard to pages on plain http.
    if (navigator.clipboard === undefined) setCopied('by-hand');
    else
      void navigator.clipboard.writeText(text).then(
        () => setCopied('copied'),
        () => setCopied('by-hand'),
      );
  };
  return (
    <>
      <TextInput
        label={`Reminder of ${invoice.number}`}
        isMultiline
        value={text}
        onChange={setText}
        error={errorFor('text')}
      />
      {act.isError && <ErrorNotice error={act.error} errors={unplaced} />}
      <div className="invoice-acts">
        {mayRemind && mailTo !== null && (
          <Button
            look="main"
            isPending={act.isPending}
            pendingText="Mailing ..."
            onPress={() => act.mutate({ text })}
          >
            {`Mail it to ${mailTo}`}
          </Button>
        )}
        <Button onPress={copy}>{copied === 'copied' ? 'Copied' : 'Copy the text'}</Button>
        <span role="status" className="money-said">
          {act.isSuccess && 'It is among the mails, with the invoice attached.'}
          {copied === 'by-hand' && 'This browser does not let the page copy: mark the text and copy it.'}
        </span>
      </div>
      {mailTo === null && (
        <p className="money-note">This client has no e-mail address: copy the text and hand it over.</p>
      )}
    </>
  );
}
