import { useNavigate } from '@tanstack/react-router';
import { RemoveAct } from '../../../components/record-editor/remove-act.tsx';
import { notify } from '../../../components/toast.tsx';
import { useRemoveCostSheet } from '../api/remove-cost-sheet.ts';

interface RemoveSheetProps {
  readonly id: string;
  readonly etag: string | null;
  readonly title: string;
}

export function RemoveSheet({ id, etag, title }: RemoveSheetProps) {
  const remove = useRemoveCostSheet(id);
  const navigate = useNavigate();
  const onSuccess = (): void => {
    notify(`${title} is removed.`);
    void navigate({ to: '/cost-sheets' });
  };
  return (
    <RemoveAct
      title="Remove this cost sheet?"
      consequence="The design and the client stay; the terms written here are gone for good."
      isPending={remove.isPending}
      error={remove.error}
      onRemove={() => remove.mutate(etag, { onSuccess })}
    />
  );
}
