import { discardPriceImport } from '@scantling/contracts';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { useDiscardPriceImport } from '../api/price-import-calls.ts';

/** Gives an import up at any time before it is taken over: its rows are forgotten, prices stay as they are. */
export function DropImport({ importId }: { readonly importId: string }) {
  const drop = useDiscardPriceImport(importId);
  if (!useMayCall(discardPriceImport)) return null;
  return (
    <>
      {drop.isError && <ErrorNotice error={drop.error} />}
      <Button isPending={drop.isPending} pendingText="Dropping ..." onPress={() => drop.mutate(undefined)}>
        Drop this import
      </Button>
    </>
  );
}
