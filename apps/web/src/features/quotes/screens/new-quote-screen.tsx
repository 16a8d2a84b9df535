import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ComboBox } from '../../../components/combo-box.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { clientChoicesQuery, sheetChoicesQuery } from '../api/list-choices.ts';
import { useCreateQuote } from '../api/quote-acts.ts';
import '../components/quote.css';

type Sheets = NonNullable<ReturnType<typeof useSheets>['data']>;
type Clients = readonly { readonly id: string; readonly label: string }[];
const useSheets = () => useQuery(sheetChoicesQuery);

const FIELDS = ['title', 'clientId', 'costSheet.id', 'costSheet.pieces'];

interface BeginProps {
  readonly clients: Clients;
  readonly sheets: Sheets;
}

function BeginForm({ clients, sheets }: BeginProps) {
  const from = useSearch({ strict: false });
  const named = sheets.find(({ id }) => id === from.costSheetId);
  const [title, setTitle] = useState(from.title ?? named?.label ?? '');
  const [clientId, setClientId] = useState<string | null>(from.clientId ?? named?.clientId ?? null);
  const [sheetId, setSheetId] = useState<string | null>(named?.id ?? null);
  const [pieces, setPieces] = useState(String(named?.pieces ?? 1));
  const [isTried, setIsTried] = useState(false);
  const [key, setKey] = useState(newIdempotencyKey);
  const create = useCreateQuote();
  const navigate = useNavigate();
  const { errorFor, unplaced } = fieldErrors(create.error, FIELDS);
  const isWhole = /^\d+$/.test(pieces);
  const begin = (): void => {
    setIsTried(true);
    if (clientId === null || (sheetId !== null && !isWhole)) return;
    const costSheet = sheetId === null ? {} : { costSheet: { id: sheetId, pieces: Number(pieces) } };
    const body = { title, clientId, enquiryId: from.enquiryId ?? null, ...costSheet };
    create.mutate(
      { body, idempotencyKey: key },
      {
        onSuccess: ({ value }) => void navigate({ to: '/quotes/$quoteId', params: { quoteId: value.id } }),
        // What is sent next is another quote than the one refused, so the key must be another too.
        onError: () => setKey(newIdempotencyKey()),
      },
    );
  };
  return (
    <form
      className="quote-fields"
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
    >
      {create.isError && unplaced.length > 0 && <ErrorNotice error={create.error} errors={unplaced} />}
      {create.isError && errorFor('title') === undefined && unplaced.length === 0 && (
        <ErrorNotice error={create.error} errors={[]} />
      )}
      <FieldGroup legend="Whom and what for">
        <ComboBox
          label="Client"
          choices={clients}
          value={clientId}
          onChange={setClientId}
          hint="Not there yet? Enter the client first, under Clients."
          error={
            errorFor('clientId') ??
            (isTried && clientId === null
              ? { message: 'is not chosen.', mend: 'Choose whom the quote is for.' }
              : undefined)
          }
        />
        <TextInput
          label="Title"
          hint="What the client reads as its heading"
          value={title}
          onChange={setTitle}
          error={errorFor('title')}
        />
      </FieldGroup>
      <FieldGroup legend="First line">
        <ComboBox
          label="Cost sheet"
          choices={sheets}
          value={sheetId}
          onChange={setSheetId}
          hint="Its net price, as it is until the quote is sent; none is fine too"
          error={errorFor('costSheet.id')}
        />
        <TextInput
          label="Pieces"
          isNumeric
          value={pieces}
          onChange={setPieces}
          isDisabled={sheetId === null}
          error={
            errorFor('costSheet.pieces') ??
            (sheetId !== null && !isWhole
              ? { message: `"${pieces}" is no whole number.`, mend: 'Enter a number from 1 to 2000.' }
              : undefined)
          }
        />
      </FieldGroup>
      <div className="sheet-actions">
        <Button type="submit" look="main" isPending={create.isPending} pendingText="Beginning ...">
          Begin the quote
        </Button>
      </div>
    </form>
  );
}

/** A new quote: for whom, under which title, and from which cost sheet. */
export function NewQuoteScreen() {
  const clients = useQuery(clientChoicesQuery);
  const sheets = useSheets();
  return (
    <Sheet>
      <SheetHeader title="New quote" path={<Link to="/quotes">Quotes</Link>} />
      {(clients.isPending || sheets.isPending) && <Loading />}
      {clients.isError && <ErrorNotice error={clients.error} retry={() => void clients.refetch()} />}
      {sheets.isError && <ErrorNotice error={sheets.error} retry={() => void sheets.refetch()} />}
      {clients.data && sheets.data && <BeginForm clients={clients.data} sheets={sheets.data} />}
    </Sheet>
  );
}
