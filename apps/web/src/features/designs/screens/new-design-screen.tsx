import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { newIdempotencyKey } from '../../../lib/api-client.ts';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useCreateDesign } from '../api/create-design.ts';
import { DESIGN_FIELDS, type DesignDraft, DesignFields } from '../components/design-fields.tsx';
import '../components/design.css';

const EMPTY: DesignDraft = { code: '', name: '', description: '', unitSystem: 'metric', overallSize: null };

export function NewDesignScreen() {
  const [draft, setDraft] = useState(EMPTY);
  const [idempotencyKey, setIdempotencyKey] = useState(newIdempotencyKey);
  const create = useCreateDesign();
  const navigate = useNavigate();
  const { errorFor, unplaced } = fieldErrors(create.error, DESIGN_FIELDS);
  return (
    <Sheet>
      <SheetHeader title="New design" path={<Link to="/designs">Designs</Link>} />
      <form
        className="design-form"
        onSubmit={(event) => {
          event.preventDefault();
          create.mutate(
            { body: draft, idempotencyKey },
            {
              onSuccess: ({ value }) =>
                void navigate({ to: '/designs/$designId', params: { designId: value.id } }),
            },
          );
        }}
      >
        {create.isError && <ErrorNotice error={create.error} errors={unplaced} />}
        <DesignFields
          draft={draft}
          errorFor={errorFor}
          onChange={(next) => {
            setDraft(next);
            // What is sent next is another design than the one refused, so the key must be another too.
            if (create.isError) setIdempotencyKey(newIdempotencyKey());
          }}
        />
        <div className="sheet-actions">
          <Button type="submit" look="main" isPending={create.isPending} pendingText="Saving ...">
            Enter the design
          </Button>
        </div>
      </form>
    </Sheet>
  );
}
