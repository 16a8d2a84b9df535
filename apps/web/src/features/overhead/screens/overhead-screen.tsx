import { createOverheadAmount, downloadOverheadRecovery } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { addressOf } from '../../../lib/api-client.ts';
import { useCurrency, useMayCall } from '../../../lib/use-session.ts';
import { Figures } from '../../figures/figures.tsx';
import { overheadRecoveryQuery } from '../api/get-overhead-recovery.ts';
import { HomeProof } from '../components/home-proof.tsx';
import { HomeTable } from '../components/home-table.tsx';
import { LostEnquiries } from '../components/lost-enquiries.tsx';
import { PoolTable } from '../components/pool-table.tsx';

/** The yearly costs of being open: where each comes back, and at which rate. */
export function OverheadScreen() {
  const recovery = useQuery(overheadRecoveryQuery);
  const currency = useCurrency();
  const mayCreate = useMayCall(createOverheadAmount);
  const newLink = mayCreate && <Link to="/overhead/new">Enter a yearly amount</Link>;
  const { data } = recovery;
  return (
    <Sheet>
      <SheetHeader
        title="Overhead"
        facts={[{ label: 'Currency', value: currency }]}
        actions={
          <a className="button button-plain" href={addressOf(downloadOverheadRecovery, {})} download>
            Spreadsheet (XLSX)
          </a>
        }
      />
      {recovery.isPending && <Loading />}
      {recovery.isError && <ErrorNotice error={recovery.error} retry={() => void recovery.refetch()} />}
      {data?.proof.lines.length === 0 && (
        <EmptyState title="Here stand the yearly costs of being open" action={newLink}>
          Enter rent, insurance, the accountant and the like, each with the one place where it is recovered.
        </EmptyState>
      )}
      {data && data.proof.lines.length > 0 && (
        <Figures table={data.figures}>
          <Section title="Yearly amounts" actions={newLink}>
            <HomeTable proof={data.proof} figures={data.figures} />
          </Section>
          <Section title="One home for each amount">
            <HomeProof proof={data.proof} />
          </Section>
          {data.lostEnquiries && (
            <Section title="Hours on lost enquiries">
              <LostEnquiries lost={data.lostEnquiries} />
            </Section>
          )}
          <Section
            title="Recovery"
            note={
              <>
                What is planned and how the year went stand in the{' '}
                <Link to="/workshop">workshop settings</Link>.
              </>
            }
          >
            <PoolTable pools={data.pools} figures={data.figures} />
          </Section>
        </Figures>
      )}
    </Sheet>
  );
}
