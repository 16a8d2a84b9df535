import type { Offer } from '@scantling/contracts';
import './offer.css';

/** Whom to ask, with the ways to reach them. */
export function AskThem({ contact }: { readonly contact: Offer['contact'] }) {
  const { name, email, phone } = contact;
  return (
    <p>
      Questions? Ask {name}
      {email !== null && (
        <>
          , <a href={`mailto:${email}`}>{email}</a>
        </>
      )}
      {phone !== '' && (
        <>
          , <a href={`tel:${phone.replaceAll(/[^\d+]/g, '')}`}>{phone}</a>
        </>
      )}
      .
    </p>
  );
}

function when(moment: string): string {
  return new Date(moment).toLocaleString(undefined, { dateStyle: 'long', timeStyle: 'short' });
}

/** What became of the offer, where it is not open any more. */
export function OfferState({ offer }: { readonly offer: Offer }) {
  const { state, acceptance, decline, document, contact } = offer;
  if (state === 'open') return null;
  return (
    <div className="offer-state" data-state={state} role="status">
      {state === 'accepted' && acceptance !== null && (
        <>
          <h2>Accepted</h2>
          <p>
            {acceptance.name} accepted this offer on {when(acceptance.acceptedAt)}. It holds as it stands
            below.
          </p>
          {acceptance.remark !== '' && <p>“{acceptance.remark}”</p>}
          <details>
            <summary>Proof of what was accepted</summary>
            <p>
              SHA-256 of the offer, the choices and the totals together, kept by both sides:{' '}
              <code>{acceptance.acceptedHash}</code>
            </p>
          </details>
        </>
      )}
      {state === 'declined' && (
        <>
          <h2>Declined</h2>
          <p>
            This offer was declined{decline === null ? '' : ` on ${when(decline.declinedAt)}`}.
            {decline !== null && decline.reason !== '' && ` “${decline.reason}”`}
          </p>
        </>
      )}
      {state === 'expired' && (
        <>
          <h2>Expired</h2>
          <p>
            This offer could be accepted until {document?.validUntil ?? 'the day it names'}. You can still
            read it; ask for a new one below.
          </p>
        </>
      )}
      {state === 'replaced' && (
        <>
          <h2>Replaced by a newer offer</h2>
          <p>
            This link leads to an earlier offer, which does not hold any more. Please open the newest link you
            got.
          </p>
        </>
      )}
      {state === 'withdrawn' && (
        <>
          <h2>Withdrawn</h2>
          <p>This offer was withdrawn and does not hold any more.</p>
        </>
      )}
      <AskThem contact={contact} />
    </div>
  );
}
