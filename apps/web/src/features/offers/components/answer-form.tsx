import type { Offer } from '@scantling/contracts';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useAcceptOffer, useDeclineOffer } from '../api/offer-calls.ts';
import { AskThem } from './offer-state.tsx';
import './offer.css';

interface AnswerFormProps {
  readonly token: string;
  readonly offer: Offer;
  readonly chosen: readonly string[];
  /** With tax, as written. */
  readonly total: string;
}

/** Yes with a name, or no with a reason if one is given. */
export function AnswerForm({ token, offer, chosen, total }: AnswerFormProps) {
  const [name, setName] = useState('');
  const [remark, setRemark] = useState('');
  const [reason, setReason] = useState('');
  const [isTried, setIsTried] = useState(false);
  const [isDeclining, setIsDeclining] = useState(false);
  const accept = useAcceptOffer(token);
  const decline = useDeclineOffer(token);
  const { errorFor, unplaced } = fieldErrors(accept.error, ['name', 'remark']);
  const isNameless = name.trim() === '';
  return (
    <section className="offer-answer" aria-label="Your answer">
      <h2>Accept this offer</h2>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          setIsTried(true);
          if (!isNameless)
            accept.mutate({ name, remark, chosen: [...chosen], documentHash: offer.documentHash ?? '' });
        }}
      >
        <TextInput
          label="Your name"
          autoComplete="name"
          value={name}
          onChange={setName}
          error={
            errorFor('name') ??
            (isTried && isNameless
              ? { message: 'is missing.', mend: 'Write who accepts, first and last name.' }
              : undefined)
          }
        />
        <TextInput label="A remark, if you wish" isMultiline value={remark} onChange={setRemark} />
        <p>
          By accepting you order what stands above, as chosen, for <strong>{total}</strong> with tax, under
          the terms above. Your name, the time and a hash of exactly this text are kept. Whether and how that
          binds you is for the law of your country to say.
        </p>
        {accept.isError && <ErrorNotice error={accept.error} errors={unplaced} />}
        <Button type="submit" look="main" isPending={accept.isPending} pendingText="Accepting ...">
          Accept for {total}
        </Button>
      </form>
      {isDeclining ? (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            decline.mutate({ reason });
          }}
        >
          <h2>Decline this offer</h2>
          <TextInput label="Why, if you wish to say" isMultiline value={reason} onChange={setReason} />
          {decline.isError && <ErrorNotice error={decline.error} />}
          <div className="offer-acts">
            <Button type="submit" isPending={decline.isPending} pendingText="Declining ...">
              Decline the offer
            </Button>
            <Button look="quiet" onPress={() => setIsDeclining(false)}>
              Not now
            </Button>
          </div>
        </form>
      ) : (
        <Button look="quiet" onPress={() => setIsDeclining(true)}>
          Decline instead
        </Button>
      )}
      <AskThem contact={offer.contact} />
    </section>
  );
}
