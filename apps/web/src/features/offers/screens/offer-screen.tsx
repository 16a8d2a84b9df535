import type { Offer } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { useLocale } from 'react-aria-components';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { formatMoney } from '../../../lib/format.ts';
import { totalsWith } from '../../client-document/chosen-lines.ts';
import { ClientDocumentView } from '../../client-document/client-document.tsx';
import { offerPaperAddress, offerPictureAddress, offerQuery } from '../api/offer-calls.ts';
import { AnswerForm } from '../components/answer-form.tsx';
import { OfferState } from '../components/offer-state.tsx';
import '../components/offer.css';

function ReadOffer({ token, offer }: { readonly token: string; readonly offer: Offer }) {
  const { document, acceptance, state } = offer;
  const [picked, setPicked] = useState<readonly string[]>([]);
  const { locale } = useLocale();
  const isOpen = state === 'open';
  useEffect(() => {
    if (document !== null) window.document.title = `${document.title} – ${document.workshop.name}`;
  }, [document]);
  if (document === null)
    return (
      <>
        <h1 className="offer-title">{offer.contact.name}</h1>
        <OfferState offer={offer} />
      </>
    );
  const chosen = acceptance?.chosen ?? picked;
  const totals = acceptance?.totals ?? totalsWith(document, chosen);
  const total = formatMoney(totals.total, document.currency, { locale });
  return (
    <>
      <OfferState offer={offer} />
      <ClientDocumentView
        document={document}
        chosen={chosen}
        totals={totals}
        pictureAddress={(sha256) => offerPictureAddress(token, sha256)}
        headingLevel={1}
        {...(isOpen ? { onChosen: setPicked } : {})}
      />
      <p className="offer-paper">
        <a className="button button-plain" href={offerPaperAddress(token)} target="_blank" rel="noreferrer">
          Download as a paper (PDF)
        </a>
      </p>
      {isOpen && <AnswerForm token={token} offer={offer} chosen={chosen} total={total} />}
      {isOpen && document.lines.some(({ choice }) => choice.kind !== 'included') && (
        <p className="offer-running" role="status">
          As chosen, with tax <strong>{total}</strong>
        </p>
      )}
    </>
  );
}

/** What a client sees behind the link: the offer, its options, and how to answer. Nothing of ours is on it. */
export function OfferScreen() {
  const { token } = useParams({ from: '/offers/$token' });
  const offer = useQuery(offerQuery(token));
  const isWrong = offer.error instanceof ApiProblem && [404, 422].includes(offer.error.status);
  return (
    <main className="offer-page">
      {offer.isPending && <Loading label="Opening the offer" />}
      {isWrong && (
        <div className="offer-state">
          <h1 className="offer-title">No offer stands behind this link</h1>
          <p>
            Open it just as it was sent to you, whole. If it stays like this, ask whoever sent it for a new
            one.
          </p>
        </div>
      )}
      {offer.isError && !isWrong && <ErrorNotice error={offer.error} retry={() => void offer.refetch()} />}
      {offer.data && <ReadOffer token={token} offer={offer.data} />}
    </main>
  );
}
