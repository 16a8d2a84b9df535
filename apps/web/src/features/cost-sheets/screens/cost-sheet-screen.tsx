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
import { TryingContext } from '../../figures/trying-context.ts';
import { workbookAddress } from '../api/download-cost-sheet.ts';
import { type CostSheetRecord, costSheetQuery } from '../api/get-cost-sheet.ts';
import { triedCostSheetQuery } from '../api/try-cost-sheet.ts';
import { workedCostSheetQuery } from '../api/work-out-cost-sheet.ts';
import { ChoiceSection } from '../components/choice-section.tsx';
import { costingProblem } from '../components/costing-problem.ts';
import { choiceOf, type DesignChoice } from '../components/design-choice.ts';
import { DrawnDifference } from '../components/drawn-difference.tsx';
import { OwnValuesSection } from '../components/own-values-section.tsx';
import { RemoveSheet } from '../components/remove-sheet.tsx';
import { scenarioValues } from '../components/scenario-changes.ts';
import { ScenariosSection } from '../components/scenarios-section.tsx';
import { TermsSection } from '../components/terms-section.tsx';
import { TrialPanel } from '../components/trial-panel.tsx';
import { useTrial } from '../components/use-trial.ts';
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
  const trial = useTrial(sheet.id, worked, sheet.unitSystem);
  const hasTried = Object.keys(trial.values).length > 0;
  const [quantity, setQuantity] = useState(sheet.quantities[0] ?? 1);
  const [from, setFrom] = useState<string | null>(null);
  const shown =
    worked === undefined || trial.tried === null ? worked : { ...worked, figures: trial.tried.table };
  const workAgain = (): void => void query.refetch();
  const scenarios = saved.data && (
    <ScenariosSection
      sheetId={sheet.id}
      worked={saved.data}
      quantity={quantity}
      onTry={(scenario) => {
        setFrom(scenario.id);
        trial.take(scenarioValues(scenario));
        window.scrollTo({ top: 0 });
      }}
    />
  );
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
                : tried === null && !hasTried
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
            <Link to="/cost-sheets/$sheetId/sensitivity" params={{ sheetId: sheet.id }} className="button">
              What moves it ...
            </Link>
            {worked && !trial.isOn && <Button onPress={() => trial.setIsOn(true)}>Try other values</Button>}
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
      {worked && trial.isOn && trial.tried !== null && (
        <TrialPanel
          sheet={sheet}
          etag={etag}
          worked={worked}
          trial={trial}
          tried={trial.tried}
          quantity={quantity}
          onQuantity={setQuantity}
          from={from}
          onFrom={setFrom}
          hasOtherChoice={tried !== null}
        />
      )}
      {trial.isOn && scenarios}
      <ChoiceSection
        key={sheet.version}
        sheet={sheet}
        etag={etag}
        choice={choice}
        onTry={setTried}
        error={query.error}
      />
      <OwnValuesSection sheet={sheet} etag={etag} worked={saved.data} />
      {worked && <DrawnDifference sheetId={sheet.id} choice={choice} worked={worked} />}
      {shown && <WorkedSections worked={shown} isInInches={sheet.unitSystem === 'imperial'} />}
      {!trial.isOn && scenarios}
      <TermsSection sheet={sheet} etag={etag} currency={worked?.currency} workError={query.error} />
    </Sheet>
  );
  // Without an answer there is nothing the address could open; the rail would call its figure gone.
  if (!shown) return body;
  return (
    <TryingContext value={trial.trying}>
      <Figures
        table={shown.figures}
        ownAddress={(record) => (record.startsWith('bill:') ? `/designs/${sheet.designId}` : undefined)}
      >
        {body}
      </Figures>
    </TryingContext>
  );
}
