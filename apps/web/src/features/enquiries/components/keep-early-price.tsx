import type { WorkedEarlyPrice } from '@scantling/contracts';
import type { EarlyPriceInput } from '@scantling/quoting';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { notify } from '../../../components/toast.tsx';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { useKeepEarlyPrice } from '../api/early-prices.ts';
import { answerText } from './answer-text.ts';
import '../../../components/save-notice.css';
import './enquiry.css';

interface KeepProps {
  readonly enquiryId: string;
  readonly input: EarlyPriceInput;
  readonly worked: WorkedEarlyPrice;
}

/** Keeps the range on its enquiry for good, and hands over a text to answer with. */
export function KeepEarlyPrice({ enquiryId, input, worked }: KeepProps) {
  const [note, setNote] = useState('');
  const navigate = useNavigate();
  const keep = useKeepEarlyPrice(enquiryId);
  return (
    <>
      {keep.isError && <ErrorNotice error={keep.error} />}
      <div className="save-bar">
        <TextInput label="Note" hint="How it was told" value={note} onChange={setNote} />
        <Button
          look="main"
          isPending={keep.isPending}
          pendingText="Keeping ..."
          onPress={() =>
            keep.mutate(
              { body: { input, note }, idempotencyKey: newIdempotencyKey() },
              {
                onSuccess: ({ value }) => {
                  notify(`Early price no. ${value.number} is kept.`);
                  void navigate({ to: '/enquiries/$enquiryId', params: { enquiryId } });
                },
              },
            )
          }
        >
          Keep on the enquiry
        </Button>
        <CopyAnswer worked={worked} />
      </div>
    </>
  );
}

/** Puts the answer on the clipboard and shows it, so that it can be read and taken by hand where that fails. */
export function CopyAnswer({ worked }: { readonly worked: WorkedEarlyPrice }) {
  const { locale } = useLocale();
  const [copied, setCopied] = useState<'yes' | 'no' | null>(null);
  const text = answerText(worked, locale);
  return (
    <>
      <Button
        onPress={() =>
          void navigator.clipboard.writeText(text).then(
            () => setCopied('yes'),
            () => setCopied('no'),
          )
        }
      >
        Copy an answer
      </Button>
      {copied !== null && (
        <p role="status" className="early-mark">
          {copied === 'yes' ? 'Copied: ' : 'This browser does not let pages copy; take it from here: '}
          <q>{text}</q>
        </p>
      )}
    </>
  );
}
