import type { ClientDocument, StatedTotals } from '@scantling/quoting';
import { useLocale } from 'react-aria-components';
import { formatMoney, formatPercent } from '../../lib/format.ts';
import { DocumentLines } from './document-lines.tsx';
import './client-document.css';

export interface ClientDocumentProps {
  readonly document: ClientDocument;
  readonly chosen: readonly string[];
  /** What it comes to with what is chosen. */
  readonly totals: StatedTotals;
  /** Set where options and alternates can be chosen. */
  readonly onChosen?: (chosen: readonly string[]) => void;
  /** Where a picture is read from. */
  readonly pictureAddress: (sha256: string) => string;
  /** Rank of its heading on the page it stands on. */
  readonly headingLevel?: 1 | 2;
}

const DUE_WORDS = {
  'on-acceptance': 'due on acceptance',
  'during-work': 'due while the work goes on',
  'on-delivery': 'due on delivery',
  'after-delivery': 'due after delivery',
} as const;

function Letterhead({ document, pictureAddress }: Pick<ClientDocumentProps, 'document' | 'pictureAddress'>) {
  const { workshop } = document;
  const ways = [workshop.phone, workshop.email ?? '', workshop.website].filter((way) => way !== '');
  return (
    <header className="offer-letterhead">
      {workshop.logo !== null && (
        <img src={pictureAddress(workshop.logo.sha256)} alt={workshop.logo.alternativeText} />
      )}
      <address>
        <strong>{workshop.name}</strong>
        {[...workshop.addressLines, ...ways].map((line) => (
          <span key={line}>{line}</span>
        ))}
      </address>
    </header>
  );
}

function Totals({ document, totals }: Pick<ClientDocumentProps, 'document' | 'totals'>) {
  const { locale } = useLocale();
  const { currency, priceMode, taxes, discount } = document;
  const money = (value: string): string => formatMoney(value, currency, { locale });
  const isInclusive = priceMode === 'inclusive';
  const taxRows = totals.taxes.map(({ id, net, tax }) => {
    const name = taxes.find((one) => one.id === id)?.name ?? '';
    return { id, label: `${isInclusive ? 'of it ' : ''}${name} on ${money(net)}`, value: money(tax) };
  });
  const share = discount?.kind === 'share' ? ` ${formatPercent(discount.share, 2, { locale })}` : '';
  return (
    <dl className="offer-totals">
      {discount !== null && (
        <>
          <div>
            <dt>Sum of the lines</dt>
            <dd>{money(totals.sumOfLines)}</dd>
          </div>
          <div>
            <dt>Discount{share}</dt>
            <dd>−{money(totals.discount)}</dd>
          </div>
        </>
      )}
      {!isInclusive && (
        <div>
          <dt>Total without tax</dt>
          <dd>{money(totals.net)}</dd>
        </div>
      )}
      {!isInclusive &&
        taxRows.map((row) => (
          <div key={row.id}>
            <dt>{row.label}</dt>
            <dd>{row.value}</dd>
          </div>
        ))}
      <div className="offer-total">
        <dt>Total with tax</dt>
        <dd>{money(totals.total)}</dd>
      </div>
      {isInclusive &&
        taxRows.map((row) => (
          <div key={row.id}>
            <dt>{row.label}</dt>
            <dd>{row.value}</dd>
          </div>
        ))}
      {taxes
        .filter(
          ({ id, exemptionReason }) => exemptionReason !== '' && totals.taxes.some((one) => one.id === id),
        )
        .map(({ id, exemptionReason }) => (
          <div key={`reason ${id}`} className="offer-note">
            <dt>{exemptionReason}</dt>
          </div>
        ))}
    </dl>
  );
}

function Schedule({ document, totals }: Pick<ClientDocumentProps, 'document' | 'totals'>) {
  const { locale } = useLocale();
  if (document.schedule.length === 0) return null;
  return (
    <section>
      <h3>How it is paid</h3>
      <dl className="offer-totals">
        {document.schedule.map(({ id, label, due, share }) => {
          const amount = totals.schedule.find((one) => one.id === id)?.amount ?? '0';
          return (
            <div key={id}>
              <dt>
                {label}, {formatPercent(share, 2, { locale })}, {DUE_WORDS[due]}
              </dt>
              <dd>{formatMoney(amount, document.currency, { locale })}</dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}

/** What the client is offered, word for word: letterhead, lines, totals, payment and terms. It holds nothing of ours. */
export function ClientDocumentView(props: ClientDocumentProps) {
  const { document, pictureAddress, headingLevel = 2 } = props;
  const Heading = headingLevel === 1 ? 'h1' : 'h2';
  const facts: readonly (readonly [string, string])[] = [
    ...(document.number === '' ? [] : [['Number', document.number] as const]),
    ...(document.revision > 1 ? [['Revision', String(document.revision)] as const] : []),
    ['Date', document.sentOn],
    ['Holds until', document.validUntil],
    ...(document.promisedOn === null ? [] : [['Promised for', document.promisedOn] as const]),
  ];
  return (
    <div className="offer">
      <Letterhead document={document} pictureAddress={pictureAddress} />
      <p className="offer-kind">{document.kind === 'quote' ? 'Quote' : 'Addition to an accepted quote'}</p>
      <Heading className="offer-title">{document.title}</Heading>
      <div className="offer-head">
        <address>
          <strong>{document.client.name}</strong>
          {document.client.addressLines.map((line) => (
            <span key={line}>{line}</span>
          ))}
        </address>
        <dl>
          {facts.map(([label, value]) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      </div>
      {document.addsTo !== null && (
        <p>
          This comes on top of {document.addsTo.number}, accepted on {document.addsTo.acceptedOn}, which stays
          as it is.
        </p>
      )}
      {document.intro !== '' && <p className="offer-text">{document.intro}</p>}
      <DocumentLines {...props} />
      <Totals {...props} />
      <Schedule {...props} />
      {document.pictures.length > 0 && (
        <div className="offer-pictures">
          {document.pictures.map(({ sha256, alternativeText }) => (
            <img key={sha256} src={pictureAddress(sha256)} alt={alternativeText} loading="lazy" />
          ))}
        </div>
      )}
      {document.terms !== '' && (
        <section>
          <h3>Terms</h3>
          <p className="offer-text">{document.terms}</p>
        </section>
      )}
      <footer className="offer-foot">
        {[
          document.workshop.taxNumber,
          document.workshop.registration,
          ...document.workshop.bankLines,
          document.workshop.footer,
        ]
          .filter((line) => line !== '')
          .map((line) => (
            <span key={line}>{line}</span>
          ))}
      </footer>
    </div>
  );
}
