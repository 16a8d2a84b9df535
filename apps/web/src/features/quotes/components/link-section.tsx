import { Button } from '../../../components/button.tsx';
import { CopyButton } from '../../../components/copy-button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { useRenewOfferLink } from '../api/quote-acts.ts';
import type { Sent } from './send-section.tsx';
import './quote.css';

function LinkNote({ path, children }: { readonly path: string; readonly children: React.ReactNode }) {
  const address = new URL(path, window.location.origin).href;
  return (
    <div className="client-link" role="status">
      <p>{children}</p>
      <p>
        <a href={path} target="_blank" rel="noreferrer">
          <code>{address}</code>
        </a>
      </p>
      <div className="quote-acts">
        <CopyButton text={() => address} byHand="mark the address and copy it.">
          Copy the link
        </CopyButton>
      </div>
    </div>
  );
}

interface LinkSectionProps {
  readonly revisionId: string;
  /** What the sending answered, where it was sent just now. */
  readonly sent: Sent | null;
  readonly canRenew: boolean;
}

/** The client's link, where it is known: it is shown once, and a new one takes its place. */
export function LinkSection({ revisionId, sent, canRenew }: LinkSectionProps) {
  const renew = useRenewOfferLink(revisionId);
  if (renew.data !== undefined)
    return (
      <LinkNote path={renew.data}>
        <strong>This is the client's new link.</strong> The earlier one does not work any more. It is shown
        this once: only its hash is kept.
      </LinkNote>
    );
  if (sent !== null && sent.linkPath !== null)
    return (
      <LinkNote path={sent.linkPath}>
        <strong>Sent.</strong>{' '}
        {sent.mailTo === null
          ? 'The client has no e-mail address: hand this link over yourself.'
          : `A mail with this link and the paper is on its way to ${sent.mailTo}.`}{' '}
        The link is shown this once; it stands in the mail too.
      </LinkNote>
    );
  if (!canRenew) return null;
  return (
    <div className="quote-acts link-acts">
      <p className="quiet">The client's link stands in the mail. Only its hash is kept here.</p>
      <Button isPending={renew.isPending} pendingText="Making it ..." onPress={() => renew.mutate()}>
        Make a new link
      </Button>
      {renew.isError && <ErrorNotice error={renew.error} />}
    </div>
  );
}
