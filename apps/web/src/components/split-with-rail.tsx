import { useEffect, useRef } from 'react';
import './split-with-rail.css';

export interface SplitWithRailProps {
  readonly children: React.ReactNode;
  /** Content of the rail; null: closed. */
  readonly rail: React.ReactNode | null;
  /** Names the rail. */
  readonly railLabel: string;
  /** What the rail is about; when it changes, the focus goes to the rail again. */
  readonly subject: string | null;
  readonly onClose: () => void;
  /** Where the focus goes on closing when the rail was opened by the address and nothing had the focus before. */
  readonly returnTo?: () => HTMLElement | null;
}

/**
 * Content with a rail beside it, never over it; below 900 px the rail is a sheet at the bottom edge and the content
 * stays usable above. Opening moves the focus into the rail, closing (also by Escape) gives it back.
 */
export function SplitWithRail({ children, rail, railLabel, subject, onClose, returnTo }: SplitWithRailProps) {
  const railRef = useRef<HTMLElement>(null);
  const cameFrom = useRef<HTMLElement | null>(null);
  const isOpen = useRef(false);

  useEffect(() => {
    const active = document.activeElement;
    if (subject === null) {
      const before = cameFrom.current?.isConnected ? cameFrom.current : (returnTo?.() ?? null);
      if (isOpen.current) before?.focus({ preventScroll: true });
      cameFrom.current = null;
      isOpen.current = false;
      return;
    }
    isOpen.current = true;
    const isElsewhere = active !== document.body && !railRef.current?.contains(active);
    if (active instanceof HTMLElement && isElsewhere) cameFrom.current = active;
    railRef.current?.focus({ preventScroll: true });
    railRef.current?.scrollTo({ top: 0 });
  }, [subject, returnTo]);

  return (
    <div className="split" data-is-open={rail === null ? undefined : ''}>
      <div className="split-content">{children}</div>
      {rail !== null && (
        <aside
          ref={railRef}
          aria-label={railLabel}
          tabIndex={-1}
          className="rail"
          onKeyDown={(event) => {
            if (event.key !== 'Escape') return;
            event.stopPropagation();
            onClose();
          }}
        >
          {rail}
        </aside>
      )}
    </div>
  );
}
