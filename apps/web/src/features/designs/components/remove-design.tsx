import { useNavigate } from '@tanstack/react-router';
import { RemoveAct } from '../../../components/record-editor/remove-act.tsx';
import { notify } from '../../../components/toast.tsx';
import { useRemoveDesign } from '../api/remove-design.ts';

interface RemoveDesignProps {
  readonly id: string;
  readonly etag: string | null;
  readonly name: string;
}

export function RemoveDesign({ id, etag, name }: RemoveDesignProps) {
  const remove = useRemoveDesign(id);
  const navigate = useNavigate();
  const onSuccess = (): void => {
    notify(`${name} is removed.`);
    void navigate({ to: '/designs', ignoreBlocker: true });
  };
  return (
    <RemoveAct
      title="Remove this design?"
      consequence="Its bill, its pictures and all its revisions go with it. A design that a cost sheet rests on stays."
      isPending={remove.isPending}
      error={remove.error}
      onRemove={() => remove.mutate(etag, { onSuccess })}
    />
  );
}
