import type { ApiToken } from '@scantling/contracts';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Dialog } from '../../../components/dialog.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { useRevokeApiToken } from '../api/revoke-api-token.ts';

/** Revokes a token, after a question; one that is revoked says since when. */
export function RevokeAct({ token }: { readonly token: ApiToken }) {
  const [isOpen, setIsOpen] = useState(false);
  const revoke = useRevokeApiToken(token.id);
  if (token.revokedAt !== null) return <>revoked {token.revokedAt.slice(0, 10)}</>;
  return (
    <>
      <Button look="danger" onPress={() => setIsOpen(true)}>
        Revoke
      </Button>
      <Dialog
        title={`Revoke ${token.name}?`}
        isOpen={isOpen}
        onOpenChange={setIsOpen}
        isQuestion
        actions={
          <>
            <Button onPress={() => setIsOpen(false)}>Keep it</Button>
            <Button
              look="danger"
              isPending={revoke.isPending}
              pendingText="Revoking ..."
              onPress={() => revoke.mutate(undefined, { onSuccess: () => setIsOpen(false) })}
            >
              Revoke
            </Button>
          </>
        }
      >
        <p>The program that uses it is refused from its next request on. A revoked token stays revoked.</p>
        {revoke.isError && <ErrorNotice error={revoke.error} />}
      </Dialog>
    </>
  );
}
