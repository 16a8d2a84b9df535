import { createQuote, type EnquiryRecord, keepEarlyPrice } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import { ErrorNotice } from '../../../components/notices.tsx';
import { PicturesSection } from '../../../components/pictures/pictures-section.tsx';
import { RecordSheet } from '../../../components/record-editor/record-sheet.tsx';
import { localToday } from '../../../lib/local-today.ts';
import { useCurrency, useMayCall } from '../../../lib/use-session.ts';
import { enquiryCalls } from '../api/enquiry-calls.ts';
import { enquiryPictures } from '../api/enquiry-pictures.ts';
import { clientChoicesQuery } from '../api/list-choices.ts';
import { EarlyPricesSection } from './early-prices-section.tsx';
import { enquiryGroups, enquiryInput, enquiryValues } from './enquiry-fields.ts';
import { OUTCOME_WORDS, SOURCE_WORDS } from './enquiry-words.ts';
import { HoursSection } from './hours-section.tsx';

const toValues = enquiryValues(localToday());

/** What a quote takes over from the enquiry it answers. */
function quoteStart({ id, clientId, name }: EnquiryRecord) {
  return { enquiryId: id, title: name, ...(clientId === null ? {} : { clientId }) };
}

/** The sheet of an enquiry; `id` is null for a new one. */
export function EnquiryEditor({ id }: { readonly id: string | null }) {
  const navigate = useNavigate();
  const clients = useQuery(clientChoicesQuery);
  const currency = useCurrency();
  const mayKeep = useMayCall(keepEarlyPrice);
  const mayQuote = useMayCall(createQuote);
  return (
    <>
      {clients.isError && <ErrorNotice error={clients.error} retry={() => void clients.refetch()} />}
      <RecordSheet
        calls={enquiryCalls}
        id={id}
        path={<Link to="/enquiries">Enquiries</Link>}
        newTitle="New enquiry"
        consequence="Its hours, early prices and pictures are gone for good, and its hours leave the overhead."
        facts={factsOf}
        actions={(enquiry) => (
          <>
            {mayKeep && (
              <Link
                to="/enquiries/$enquiryId/early-price"
                params={{ enquiryId: enquiry.id }}
                className="button button-main"
              >
                Early price
              </Link>
            )}
            {mayQuote && (
              <Link to="/quotes/new" search={quoteStart(enquiry)} className="button button-plain">
                Make a quote
              </Link>
            )}
          </>
        )}
        groups={enquiryGroups(clients.data ?? [], currency, id === null)}
        toValues={toValues}
        toInput={enquiryInput}
        onCreated={(enquiry) =>
          void navigate({ to: '/enquiries/$enquiryId', params: { enquiryId: enquiry.id } })
        }
        onRemoved={() => void navigate({ to: '/enquiries' })}
        {...(id === null
          ? {}
          : {
              below: (enquiry: EnquiryRecord) => (
                <>
                  <PicturesSection
                    calls={enquiryPictures}
                    id={enquiry.id}
                    note="what the client sent and what was seen on the visit; kept at once"
                    emptyText="No pictures yet."
                  />
                  <EarlyPricesSection enquiryId={enquiry.id} />
                  <HoursSection enquiryId={enquiry.id} total={enquiry.hoursSpent} />
                </>
              ),
            })}
      />
    </>
  );
}

function factsOf(enquiry: EnquiryRecord) {
  return [
    { label: 'Asked by', value: enquiry.clientName ?? enquiry.askedBy },
    { label: 'Received', value: enquiry.receivedOn },
    { label: 'Came by', value: SOURCE_WORDS[enquiry.source] },
    { label: 'Outcome', value: OUTCOME_WORDS[enquiry.outcome] },
    { label: 'Hours spent', value: `${enquiry.hoursSpent} h` },
  ];
}
