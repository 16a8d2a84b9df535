import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Dialog } from '../../../components/dialog.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { notify } from '../../../components/toast.tsx';
import { useRemoveDesign } from '../api/remove-design.ts';

interface RemoveDesignProps {
  readonly id: string;
  readonly etag: string | null;
  readonly name: string;
}

export function RemoveDesign({ id, etag, name }: RemoveDesignProps) {
  const [isOpen, setIsOpen] = useState(false);
  const remove = useRemoveDesign(id);
  const navigate = useNavigate();
  const onRemoved = (): void => {
    notify(`${name} is removed.`);
    void navigate({ to: '/designs', ignoreBlocker: true });
  };
  return (
    <>
      <Button look="danger" onPress={() => setIsOpen(true)}>
        Remove
      </Button>
      <Dialog
        title="Remove this design?"
        isOpen={isOpen}
        onOpenChange={setIsOpen}
        isQuestion
        actions={
          <>
            <Button onPress={() => setIsOpen(false)}>Keep it</Button>
            <Button
              look="danger"
              isPending={remove.isPending}
              pendingText="Removing ..."
              onPress={() => remove.mutate(etag, { onSuccess: onRemoved })}
            >
              Remove
            </Button>
          </>
        }
      >
        <p>Its bill and all its revisions go with it. A design that a cost sheet rests on stays.</p>
        {remove.isError && <ErrorNotice error={remove.error} />}
      </Dialog>
    </>
  );
}
