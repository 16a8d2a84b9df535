import { addressOf, getDocument } from '@scantling/contracts';

interface PaperLinkProps {
  readonly id: string;
  readonly children: React.ReactNode;
  readonly isButton?: boolean;
}

/** A stored PDF, opened beside the screen. */
export function PaperLink({ id, children, isButton = false }: PaperLinkProps) {
  return (
    <a
      {...(isButton ? { className: 'button button-plain' } : {})}
      href={addressOf(getDocument, { params: { id } })}
      target="_blank"
      rel="noreferrer"
    >
      {children}
    </a>
  );
}
