import './ruled-rows.css';

interface RuledFrameProps {
  readonly label: string;
  readonly children: React.ReactNode;
}

/** The frame a ruled table scrolls sideways in; it takes the focus, so that the keyboard can scroll it (WCAG 2.1.1). */
export function RuledFrame({ label, children }: RuledFrameProps) {
  const focusable = { tabIndex: 0 };
  return (
    <section className="ruled-frame" aria-label={label} {...focusable}>
      {children}
    </section>
  );
}
