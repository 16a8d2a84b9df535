import { useNavigate } from '@tanstack/react-router';
import { RemoveAct } from '../../../components/record-editor/remove-act.tsx';
import { notify } from '../../../components/toast.tsx';
import type { Revision } from '../api/get-quote.ts';
import { useRemoveQuoteDraft } from '../api/quote-acts.ts';

export function RemoveDraft({
  revision,
  etag,
}: {
  readonly revision: Revision;
  readonly etag: string | null;
}) {
  const remove = useRemoveQuoteDraft(revision.id);
  const navigate = useNavigate();
  return (
    <RemoveAct
      title="Remove this draft?"
      consequence="What was sent or accepted before stays; a quote of which nothing else is left goes with it."
      isPending={remove.isPending}
      error={remove.error}
      onRemove={() =>
        // The screen of what is gone gives way before this is told; a failure is shown in the question.
        void remove.mutateAsync(etag).then(
          () => {
            notify('The draft is removed.');
            void navigate({ to: '/quotes', ignoreBlocker: true });
          },
          () => undefined,
        )
      }
    />
  );
}
