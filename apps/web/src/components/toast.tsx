import {
  Button,
  UNSTABLE_Toast as Toast,
  UNSTABLE_ToastContent as ToastContent,
  UNSTABLE_ToastQueue as ToastQueue,
  UNSTABLE_ToastRegion as ToastRegion,
} from 'react-aria-components';
import './toast.css';

interface Note {
  readonly text: string;
  readonly tone: 'done' | 'error';
}

const queue = new ToastQueue<Note>({ maxVisibleToasts: 3 });

/**
 * Says that something is done, wherever the reader is by then. Errors stay until they are put away, and are
 * always said on the sheet as well.
 */
export function notify(text: string, tone: Note['tone'] = 'done'): void {
  queue.add({ text, tone }, tone === 'done' ? { timeout: 5000 } : {});
}

/** Stands once in the page, at its end. */
export function Toasts() {
  return (
    <ToastRegion queue={queue} className="toasts" aria-label="Notes">
      {({ toast }) => (
        <Toast toast={toast} className={`toast toast-${toast.content.tone}`}>
          <ToastContent>{toast.content.text}</ToastContent>
          <Button slot="close" className="toast-close">
            Put away
          </Button>
        </Toast>
      )}
    </ToastRegion>
  );
}
