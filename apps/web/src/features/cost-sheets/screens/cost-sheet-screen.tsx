import { createQuote, removeCostSheet } from '@scantling/contracts';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice, StaleNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { Figures } from '../../figures/figures.tsx';
import { workbookAddress } from '../api/download-cost-sheet.ts';
import { type CostSheetRecord, costSheetQuery } from '../api/get-cost-sheet.ts';
import { triedCostSheetQuery } from '../api/try-cost-sheet.ts';
import { workedCostSheetQuery } from '../api/work-out-cost-sheet.ts';
import { ChoiceSection } from '../components/choice-section.tsx';
import { costingProblem } from '../components/costing-problem.ts';
import { choiceOf, type DesignChoice } from '../components/design-choice.ts';
import { DrawnDifference } from '../components/drawn-difference.tsx';
import { RemoveSheet } from '../components/remove-sheet.tsx';
import { TermsSection } from '../components/terms-section.tsx';
import { WorkedSections } from '../components/worked-sections.tsx';

/** What a design costs and what to charge; every number opens its working. */
export function CostSheetScreen() {
  const { sheetId = '' } = useParams({ strict: false });
  const sheet = useQuery(costSheetQuery(sheetId));
  if (sheet.isPending) {
    return (
      <Sheet>
        <SheetHeader title="Cost sheet" path={<Link to="/cost-sheets">Cost sheets</Link>} />
        <Loading />
      </Sheet>
    );
  }
  if (sheet.isError) {
    return (
      <Sheet>
        <SheetHeader title="Cost sheet" path={<Link to="/cost-sheets">Cost sheets</Link>} />
        <ErrorNotice error={sheet.error} retry={() => void sheet.refetch()} />
      </Sheet>
    );
  }
  return <WorkedSheet key={sheetId} sheet={sheet.data.value} etag={sheet.data.etag} />;
}

interface WorkedSheetProps {
  readonly sheet: CostSheetRecord;
  readonly etag: string | null;
}

function WorkedSheet({ sheet, etag }: WorkedSheetProps) {
  const [tried, setTried] = useState<DesignChoice | null>(null);
  const choice = tried ?? choiceOf(sheet);
  const saved = useQuery(workedCostSheetQuery(sheet.id));
  const attempt = useQuery({
    ...triedCostSheetQuery(sheet.id, choice),
    enabled: tried !== null,
    placeholderData: keepPreviousData,
  });
  const query = tried === null ? saved : attempt;
  const canRemove = useMayCall(removeCostSheet);
  const canQuote = useMayCall(createQuote);
  const worked = query.data ?? saved.data;
  const workAgain = (): void => void query.refetch();
  const body = (
    <Sheet>
      <SheetHeader
        title={sheet.title}
        path={<Link to="/cost-sheets">Cost sheets</Link>}
        facts={[
          {
            label: 'Design',
            value: (
              <Link to="/designs/$designId" params={{ designId: sheet.designId }}>
                {sheet.designName}
              </Link>
            ),
          },
          { label: 'Client', value: sheet.clientName ?? 'nobody in particular' },
          { label: 'Basis', value: sheet.basis },
          { label: 'Prices of', value: sheet.onDate ?? `${worked?.onDate ?? ''} (today)` },
          { label: 'Currency', value: worked?.currency ?? '' },
          {
            label: 'Worked out',
            value: query.isFetching
              ? 'now ...'
              : query.isError
                ? 'failed'
                : tried === null
                  ? 'as shown'
                  : 'as tried',
          },
        ]}
        actions={
          <>
            {canQuote && (
              <Link to="/quotes/new" search={{ costSheetId: sheet.id }} className="button button-main">
                Quote this piece
              </Link>
            )}
            <Link to="/cost-sheets/$sheetId/compare" params={{ sheetId: sheet.id }} className="button">
              Compare with ...
            </Link>
            <Button isPending={query.isFetching} pendingText="Working ..." onPress={workAgain}>
              Work out again
            </Button>
            <a className="button button-plain" href={workbookAddress(sheet.id)} download>
              Spreadsheet (XLSX)
            </a>
            {canRemove && <RemoveSheet id={sheet.id} etag={etag} title={sheet.title} />}
          </>
        }
      />
      {query.isPending && !worked && <Loading label="Working out" />}
      {query.isError && (
        <ErrorNotice
          error={query.error instanceof ApiProblem ? costingProblem(query.error) : query.error}
          retry={workAgain}
        />
      )}
      {query.isError && worked && <StaleNotice>Worked out before the last change.</StaleNotice>}
      <ChoiceSection
        key={sheet.version}
        sheet={sheet}
        etag={etag}
        choice={choice}
        onTry={setTried}
        error={query.error}
      />
      {worked && <DrawnDifference sheetId={sheet.id} choice={choice} worked={worked} />}
      {worked && <WorkedSections worked={worked} isInInches={sheet.unitSystem === 'imperial'} />}
      <TermsSection sheet={sheet} etag={etag} currency={worked?.currency} workError={query.error} />
    </Sheet>
  );
  // Without an answer there is nothing the address could open; the rail would call its figure gone.
  if (!worked) return body;
  return (
    <Figures
      table={worked.figures}
      ownAddress={(record) => (record.startsWith('bill:') ? `/designs/${sheet.designId}` : undefined)}
    >
      {body}
    </Figures>
  );
}
