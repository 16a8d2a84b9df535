import { decidePriceImpact } from '@scantling/contracts';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { localMoment } from '../../../lib/local-moment.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { type PriceImpactRow, useDecidePriceImpact } from '../api/price-impact-calls.ts';
import './price-impact.css';

const DECIDED_WORDS = {
  revise: 'New revision begun',
  hold: 'The price quoted stands',
  accept: 'Accepted',
  reopen: 'Open again',
} as const;

/** What was decided about a row, by whom and why, and the way back. */
function Decided({ row }: { readonly row: PriceImpactRow }) {
  const decide = useDecidePriceImpact(row.id);
  const mayDecide = useMayCall(decidePriceImpact);
  if (row.decision === null) return null;
  const { decision, reason, decidedBy, decidedAt } = row.decision;
  return (
    <div className="impact-decided">
      <p>
        <strong>{DECIDED_WORDS[decision]}</strong>
        {reason !== '' && `: ${reason}`}
      </p>
      <p className="impact-note">
        {decidedBy}, {localMoment(decidedAt)}
      </p>
      {decision === 'revise' && row.quoteId !== null && (
        <Link to="/quotes/$quoteId" params={{ quoteId: row.quoteId }}>
          Open the revision
        </Link>
      )}
      {mayDecide && row.isOpen && (
        <Button
          look="quiet"
          aria-label={`Take the decision on ${row.title} back`}
          isPending={decide.isPending}
          onPress={() => decide.mutate({ decision: 'reopen' })}
        >
          Take back
        </Button>
      )}
      {decide.isError && <ErrorNotice error={decide.error} />}
    </div>
  );
}

/** The reason why a price quoted stands although the cost moved. */
function HoldForm({ row, onClose }: { readonly row: PriceImpactRow; readonly onClose: () => void }) {
  const [reason, setReason] = useState('');
  const decide = useDecidePriceImpact(row.id);
  const { errorFor, unplaced } = fieldErrors(decide.error, ['reason']);
  return (
    <form
      className="impact-hold"
      onSubmit={(event) => {
        event.preventDefault();
        decide.mutate({ decision: 'hold', reason }, { onSuccess: onClose });
      }}
    >
      <TextInput
        label="Why the price quoted stands"
        value={reason}
        onChange={setReason}
        error={errorFor('reason')}
        autoFocus
      />
      {decide.isError && unplaced.length > 0 && <ErrorNotice error={decide.error} errors={unplaced} />}
      <div className="impact-acts">
        <Button type="submit" look="main" isPending={decide.isPending} pendingText="Keeping ...">
          Hold the price
        </Button>
        <Button look="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </form>
  );
}

/** What can be done about a row: a new revision, hold or accept for what was sent; the rest follows by itself. */
export function WhatToDo({ row }: { readonly row: PriceImpactRow }) {
  const [isHolding, setIsHolding] = useState(false);
  const decide = useDecidePriceImpact(row.id);
  const mayDecide = useMayCall(decidePriceImpact);
  if (row.decision !== null) return <Decided row={row} />;
  if (!row.isOpen)
    return <p className="impact-note">Answered, replaced or withdrawn since: nothing to do.</p>;
  if (isHolding) return <HoldForm row={row} onClose={() => setIsHolding(false)} />;
  const isSent = row.kind === 'sent';
  const pending = decide.isPending ? decide.variables.decision : null;
  return (
    <div>
      {!isSent && (
        <p className="impact-note">
          {row.kind === 'draft' ? 'The draft follows by itself.' : 'The sheet is costed anew by itself.'}
        </p>
      )}
      {mayDecide && (
        <div className="impact-acts">
          {isSent && (
            <>
              <Button
                aria-label={`Make a new revision of ${row.title}`}
                isPending={pending === 'revise'}
                pendingText="Making ..."
                onPress={() => decide.mutate({ decision: 'revise' })}
              >
                New revision
              </Button>
              <Button aria-label={`Hold the price of ${row.title}`} onPress={() => setIsHolding(true)}>
                Hold ...
              </Button>
            </>
          )}
          <Button
            aria-label={`Accept it for ${row.title}`}
            isPending={pending === 'accept'}
            pendingText="Keeping ..."
            onPress={() => decide.mutate({ decision: 'accept' })}
          >
            Accept
          </Button>
        </div>
      )}
      {decide.isError && <ErrorNotice error={decide.error} />}
    </div>
  );
}
