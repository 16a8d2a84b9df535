import { useState } from 'react';
import { Button } from '../button.tsx';
import { Dialog } from '../dialog.tsx';
import { ErrorNotice } from '../notices.tsx';

interface RemoveActProps {
  /** "Remove Alder & Ash" */
  readonly title: string;
  /** The words on the button; "Remove" where absent. */
  readonly act?: string;
  /** What goes with it. */
  readonly consequence: string;
  readonly isPending: boolean;
  readonly error: unknown;
  readonly onRemove: () => void;
}

/** Removing, after a question. */
export function RemoveAct({
  title,
  act = 'Remove',
  consequence,
  isPending,
  error,
  onRemove,
}: RemoveActProps) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <>
      <Button look="danger" onPress={() => setIsOpen(true)}>
        {act}
      </Button>
      <Dialog
        title={title}
        isOpen={isOpen}
        onOpenChange={setIsOpen}
        isQuestion
        actions={
          <>
            <Button onPress={() => setIsOpen(false)}>Keep it</Button>
            <Button look="danger" isPending={isPending} pendingText="Wait ..." onPress={onRemove}>
              {act}
            </Button>
          </>
        }
      >
        <p>{consequence}</p>
        {error !== null && error !== undefined && <ErrorNotice error={error} />}
      </Dialog>
    </>
  );
}
