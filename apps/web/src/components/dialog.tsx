import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import './dialog.css';

export interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  /** Called with false by Escape, a press outside, and `close`. */
  readonly onOpenChange: (isOpen: boolean) => void;
  readonly children: React.ReactNode;
  /** The acts, main one last. */
  readonly actions: React.ReactNode;
  /** For a question that must be answered: read out as an alert, a press outside does not close it. */
  readonly isQuestion?: boolean;
}

/** Only for what interrupts: confirming what cannot be undone, a short entry. The rest has its place on the sheet. */
export function Dialog({ title, isOpen, onOpenChange, children, actions, isQuestion = false }: DialogProps) {
  return (
    <ModalOverlay
      isOpen={isOpen}
      onOpenChange={onOpenChange}
      isDismissable={!isQuestion}
      className="dialog-cover"
    >
      <Modal className="dialog-frame">
        <AriaDialog role={isQuestion ? 'alertdialog' : 'dialog'} className="dialog">
          <Heading slot="title" level={2} className="dialog-title">
            {title}
          </Heading>
          <div className="dialog-body">{children}</div>
          <div className="dialog-actions">{actions}</div>
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
