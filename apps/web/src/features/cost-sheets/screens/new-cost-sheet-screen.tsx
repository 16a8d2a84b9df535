import type { NewCostSheetTerms } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import type { FieldError } from '../../../lib/api-problem.ts';
import { useCreateCostSheet } from '../api/create-cost-sheet.ts';
import { newSheetTermsQuery } from '../api/get-workshop.ts';
import { readDraft } from '../components/read-draft.ts';
import { newDraft } from '../components/sheet-draft.ts';
import { SheetForm } from '../components/sheet-form.tsx';

function NewSheetForm({ terms }: { readonly terms: NewCostSheetTerms }) {
  const { designId } = useSearch({ strict: false });
  const [draft, setDraft] = useState(() => newDraft(designId ?? null, terms));
  const [found, setFound] = useState<readonly FieldError[]>([]);
  const [idempotencyKey, setIdempotencyKey] = useState(newIdempotencyKey);
  const create = useCreateCostSheet();
  const navigate = useNavigate();
  return (
    <SheetForm
      draft={draft}
      onChange={(change) => {
        setDraft({ ...draft, ...change });
        // What is sent next is another sheet than the one refused, so the key must be another too.
        if (create.isError) setIdempotencyKey(newIdempotencyKey());
      }}
      found={found}
      error={create.error}
      currency={undefined}
      onSubmit={() => {
        const { body, errors } = readDraft(draft);
        setFound(errors);
        if (body === null) return;
        create.mutate(
          { body, idempotencyKey },
          {
            onSuccess: ({ value }) =>
              void navigate({ to: '/cost-sheets/$sheetId', params: { sheetId: value.id } }),
          },
        );
      }}
    >
      <Button type="submit" look="main" isPending={create.isPending} pendingText="Saving ...">
        Make the cost sheet
      </Button>
    </SheetForm>
  );
}

/** A new cost sheet, with the terms the workshop starts one with. */
export function NewCostSheetScreen() {
  const terms = useQuery(newSheetTermsQuery);
  return (
    <Sheet>
      <SheetHeader title="New cost sheet" path={<Link to="/cost-sheets">Cost sheets</Link>} />
      {terms.isPending && <Loading />}
      {terms.isError && <ErrorNotice error={terms.error} retry={() => void terms.refetch()} />}
      {terms.data && <NewSheetForm terms={terms.data} />}
    </Sheet>
  );
}
