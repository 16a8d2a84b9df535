import { restoreDesignRevision } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import { notify } from '../../../components/toast.tsx';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import type { Design } from '../api/get-design.ts';
import { designRevisionQuery } from '../api/get-design-revision.ts';
import { useRestoreDesignRevision } from '../api/restore-design-revision.ts';
import { draftOf } from './bill-draft.ts';
import { placeWords } from './place-words.ts';
import { RevisionTables } from './revision-tables.tsx';
import '../../../components/field.css';

interface ReadRevisionProps {
  readonly design: Design;
  readonly etag: string | null;
  readonly number: number;
  readonly isBlocked: boolean;
  readonly onClose: () => void;
}

/** A drawing as it stood, and the act that makes it the newest again. */
export function ReadRevision({ design, etag, number, isBlocked, onClose }: ReadRevisionProps) {
  const revision = useQuery(designRevisionQuery(design.id, number));
  const restore = useRestoreDesignRevision(design.id);
  const canRestore = useMayCall(restoreDesignRevision) && number !== design.version;
  const drawn = revision.data;
  const problem = restore.error instanceof ApiProblem ? restore.error : null;
  const bringBack = (): void =>
    restore.mutate(
      { number, etag },
      {
        onSuccess: ({ value }) => {
          notify(`Revision ${number} is back as revision ${value.version}.`);
          onClose();
        },
      },
    );
  return (
    <Section
      title={`Revision ${number}`}
      note={drawn && [drawn.createdAt.slice(0, 10), drawn.madeBy, drawn.note].filter(Boolean).join(', ')}
      actions={
        <>
          {canRestore && (
            <Button
              isPending={restore.isPending}
              isDisabled={isBlocked}
              pendingText="Bringing back ..."
              onPress={bringBack}
            >
              Bring back as revision {design.version + 1}
            </Button>
          )}
          <Button look="quiet" onPress={onClose}>
            Close
          </Button>
        </>
      }
    >
      {canRestore && isBlocked && (
        <p className="field-hint">Save or drop the changes first; an earlier drawing takes their place.</p>
      )}
      {restore.isError && (
        <ErrorNotice
          error={restore.error}
          {...(problem && drawn
            ? {
                errors: problem.errors.map((one) => ({
                  ...one,
                  field: placeWords(one.field, draftOf(drawn, design.unitSystem)),
                })),
              }
            : {})}
        />
      )}
      {revision.isPending && <Loading />}
      {revision.isError && <ErrorNotice error={revision.error} retry={() => void revision.refetch()} />}
      {drawn && <RevisionTables drawing={drawn} number={number} system={design.unitSystem} />}
    </Section>
  );
}
