import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Dialog } from '../../../components/dialog.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { notify } from '../../../components/toast.tsx';
import { useRemoveCostSheet } from '../api/remove-cost-sheet.ts';

interface RemoveSheetProps {
  readonly id: string;
  readonly etag: string | null;
  readonly title: string;
}

export function RemoveSheet({ id, etag, title }: RemoveSheetProps) {
  const [isOpen, setIsOpen] = useState(false);
  const remove = useRemoveCostSheet(id);
  const navigate = useNavigate();
  const onRemoved = (): void => {
    notify(`${title} is removed.`);
    void navigate({ to: '/cost-sheets' });
  };
  return (
    <>
      <Button look="danger" onPress={() => setIsOpen(true)}>
        Remove
      </Button>
      <Dialog
        title="Remove this cost sheet?"
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
        <p>The design and the client stay; the terms written here are gone for good.</p>
        {remove.isError && <ErrorNotice error={remove.error} />}
      </Dialog>
    </>
  );
}
