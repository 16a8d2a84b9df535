import { workOutPriceImpact } from '@scantling/contracts';
import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { Button } from '../../../components/button.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading, Progress } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { formatNumber } from '../../../lib/format.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { Figures } from '../../figures/figures.tsx';
import { mergeTables } from '../../figures/merge-tables.ts';
import {
  isUnderWay,
  type PriceImpact,
  priceImpactQuery,
  priceImpactRowsQuery,
  useWorkOutPriceImpact,
} from '../api/price-impact-calls.ts';
import { ImpactTable } from '../components/impact-table.tsx';

/** What a price list does to open quotes and cost sheets, and what to do about each. */
export function PriceImpactScreen() {
  const { priceListId = '' } = useParams({ strict: false });
  const query = useQuery(priceImpactQuery(priceListId));
  const impact = query.data;
  const begin = useWorkOutPriceImpact(priceListId);
  const mayBegin = useMayCall(workOutPriceImpact);
  const isKnown = impact !== undefined && impact.status !== 'none';
  const rows = useInfiniteQuery({
    ...priceImpactRowsQuery(priceListId),
    enabled: impact?.status === 'done',
  });
  const all = rows.data?.pages.flatMap(({ items }) => items) ?? [];
  const act = (
    <Button
      {...(isKnown ? {} : { look: 'main' as const })}
      isPending={begin.isPending}
      pendingText="Beginning ..."
      onPress={() => begin.mutate()}
    >
      {isKnown ? 'Work out again' : 'Work it out'}
    </Button>
  );
  const body = (
    <Sheet>
      <SheetHeader
        title="What this list moves"
        path={
          <Link to="/price-lists/$priceListId" params={{ priceListId }}>
            {impact === undefined ? 'Price list' : `${impact.supplierName}, ${impact.listName}`}
          </Link>
        }
        facts={impact === undefined ? [] : factsOf(impact)}
        actions={mayBegin && isKnown && !isUnderWay(impact) ? act : undefined}
      />
      {query.isPending && <Loading />}
      {query.isError && <ErrorNotice error={query.error} retry={() => void query.refetch()} />}
      {begin.isError && <ErrorNotice error={begin.error} />}
      {impact && <Standing impact={impact} act={mayBegin ? act : undefined} />}
      {rows.isError && <ErrorNotice error={rows.error} retry={() => void rows.refetch()} />}
      {impact?.status === 'done' && rows.isPending && <Loading label="Reading the list" />}
      {all.length > 0 && (
        <Section
          title="Open quotes and cost sheets"
          note="the most money first; what is decided stands at the end. A sent quote keeps its price until you send a new revision."
        >
          <ImpactTable rows={all} />
          {rows.hasNextPage && (
            <Button
              isPending={rows.isFetchingNextPage}
              pendingText="Reading ..."
              onPress={() => void rows.fetchNextPage()}
            >
              Show more
            </Button>
          )}
        </Section>
      )}
    </Sheet>
  );
  const table = mergeTables(Object.fromEntries(all.map(({ id, figures }) => [id, figures])));
  return <Figures table={table}>{body}</Figures>;
}

function factsOf({ supplierName, validFrom, onDay, moved, undecided }: PriceImpact) {
  return [
    { label: 'Supplier', value: supplierName },
    { label: 'Holds from', value: validFrom },
    { label: 'Prices of', value: onDay ?? '' },
    { label: 'Moved', value: formatNumber(moved, 0) },
    { label: 'To decide', value: formatNumber(undecided, 0) },
  ];
}

interface StandingProps {
  readonly impact: PriceImpact;
  readonly act: React.ReactNode;
}

/** How far it is, or why there is nothing to show. */
function Standing({ impact, act }: StandingProps) {
  const { status, touched, worked, moved, problem } = impact;
  if (isUnderWay(impact))
    return (
      <Progress
        label={
          status === 'waiting' ? 'Finding what rests on these prices' : 'Costing with and without the list'
        }
        {...(touched > 0 && status === 'working'
          ? {
              percent: Math.floor((worked * 100) / touched),
              text: `${formatNumber(worked, 0)} of ${formatNumber(touched, 0)}`,
            }
          : {})}
      />
    );
  if (status === 'none')
    return (
      <EmptyState title="What this list moves has not been worked out." action={act}>
        Open quotes and cost sheets that rest on prices it replaced are found and costed with and without it.
      </EmptyState>
    );
  if (status === 'failed') return <EmptyState title={problem ?? 'It failed.'} action={act} />;
  if (moved === 0)
    return <EmptyState title="No open quote and no cost sheet rests on a price this list moved." />;
  return null;
}
