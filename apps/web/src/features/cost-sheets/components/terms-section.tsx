import { editCostSheet } from '@scantling/contracts';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Section } from '../../../components/sheet.tsx';
import { ApiProblem, type FieldError } from '../../../lib/api-problem.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { useEditCostSheet } from '../api/edit-cost-sheet.ts';
import { type CostSheetRecord, costSheetQuery } from '../api/get-cost-sheet.ts';
import { choiceOf } from './design-choice.ts';
import { readDraft } from './read-draft.ts';
import { draftOf } from './sheet-draft.ts';
import { SheetForm } from './sheet-form.tsx';

interface TermsSectionProps {
  readonly sheet: CostSheetRecord;
  readonly etag: string | null;
  readonly currency: string | undefined;
  /** What working the sheet out failed on, if it did; its fields are marked here. */
  readonly workError: unknown;
}

/** The form of a saved sheet. Saving works it out again; what somebody else saved meanwhile is never overwritten silently. */
export function TermsSection({ sheet, etag, currency, workError }: TermsSectionProps) {
  const [draft, setDraft] = useState(() => draftOf(sheet));
  const [found, setFound] = useState<readonly FieldError[]>([]);
  const edit = useEditCostSheet(sheet.id);
  const canEdit = useMayCall(editCostSheet);
  const queryClient = useQueryClient();
  const isOvertaken = edit.error instanceof ApiProblem && edit.error.status === 412;

  const save = (onto: string | null, kept: CostSheetRecord = sheet): void => {
    const { body, errors } = readDraft(draft);
    setFound(errors);
    if (body === null) return;
    // Another design has parameters of its own.
    const choice = body.designId === kept.designId ? choiceOf(kept) : {};
    edit.mutate(
      { body: { ...body, ...choice }, etag: onto },
      { onSuccess: ({ value }) => setDraft(draftOf(value)) },
    );
  };
  const readNewest = () => queryClient.fetchQuery({ ...costSheetQuery(sheet.id), staleTime: 0 });

  return (
    <Section title="Terms" note="Saving works the sheet out again.">
      <SheetForm
        draft={draft}
        onChange={(change) => {
          if (edit.isSuccess) edit.reset();
          setDraft({ ...draft, ...change });
        }}
        found={found}
        error={edit.error}
        workError={workError}
        currency={currency}
        onSubmit={() => {
          if (canEdit) save(etag);
        }}
      >
        {canEdit ? (
          <Button type="submit" look="main" isPending={edit.isPending} pendingText="Saving ...">
            Save and work out
          </Button>
        ) : (
          <p>You may read this sheet; who makes pieces may change it.</p>
        )}
        {isOvertaken && (
          <>
            <Button
              onPress={() =>
                void readNewest().then(({ value }) => {
                  edit.reset();
                  setDraft(draftOf(value));
                })
              }
            >
              Take the other version
            </Button>
            <Button onPress={() => void readNewest().then((newest) => save(newest.etag, newest.value))}>
              Save mine over it
            </Button>
          </>
        )}
        {edit.isSuccess && <span role="status">Saved.</span>}
      </SheetForm>
    </Section>
  );
}
