import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { RuledFrame } from '../../../components/ruled-frame.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { MailPaperSection } from '../../papers/mail-paper-section.tsx';
import { PaperLink } from '../../papers/paper-link.tsx';
import { deliveryNoteQuery } from '../api/get-delivery-note.ts';
import type { DeliveryNote } from '../api/list-delivery-notes.ts';
import { lineKey } from '../components/delivery-form.ts';
import { countWords } from '../components/delivery-words.ts';
import '../components/delivery-notes.css';

function HandedOver({ document }: Pick<DeliveryNote, 'document'>) {
  const { locale } = useLocale();
  return (
    <Section title="What was handed over">
      {document.note !== '' && <p className="delivery-note-text">{document.note}</p>}
      <RuledFrame label="What was handed over, in rows">
        <table className="ruled-rows">
          <thead>
            <tr>
              <th scope="col">Line</th>
              <th scope="col" className="numeric">
                Handed over
              </th>
              <th scope="col" className="numeric">
                Ordered
              </th>
              <th scope="col" className="numeric">
                Still to come then
              </th>
            </tr>
          </thead>
          <tbody>
            {document.lines.map((line) => (
              <tr key={lineKey(line)}>
                <th scope="row" className="ruled-name">
                  {line.description}
                </th>
                <td className="numeric">{countWords(line.quantity, line.unit, locale)}</td>
                <td className="numeric">{countWords(line.ordered, line.unit, locale)}</td>
                <td className="numeric">{countWords(line.outstanding, line.unit, locale)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </RuledFrame>
    </Section>
  );
}

function Note({ note }: { readonly note: DeliveryNote }) {
  const { document, quoteId } = note;
  return (
    <Sheet>
      <SheetHeader
        title={`Delivery note ${note.number}`}
        path={
          <Link to="/quotes/$quoteId/delivery-notes" params={{ quoteId }}>
            Delivery notes of the quote
          </Link>
        }
        facts={[
          { label: 'Client', value: document.client.name },
          {
            label: 'Quote',
            value: (
              <Link to="/quotes/$quoteId" params={{ quoteId }}>
                {document.quoteNumber}
              </Link>
            ),
          },
          { label: 'For', value: document.title },
          { label: 'Handed over on', value: note.deliveredOn },
          ...(document.orderNumber === '' ? [] : [{ label: 'Their order', value: document.orderNumber }]),
          ...(note.isDemo ? [{ label: 'Demo', value: 'invented' }] : []),
        ]}
        actions={
          <PaperLink id={note.paperId} isButton>
            The paper to sign (PDF)
          </PaperLink>
        }
      />
      <HandedOver document={document} />
      <MailPaperSection documentId={note.paperId} />
    </Sheet>
  );
}

/** A delivery note as it was written. */
export function DeliveryNoteScreen() {
  const { deliveryNoteId = '' } = useParams({ strict: false });
  const read = useQuery(deliveryNoteQuery(deliveryNoteId));
  if (read.data) return <Note note={read.data} />;
  return (
    <Sheet>
      <SheetHeader title="Delivery note" />
      {read.isPending && <Loading />}
      {read.isError && <ErrorNotice error={read.error} retry={() => void read.refetch()} />}
    </Sheet>
  );
}
