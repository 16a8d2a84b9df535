import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { Checkbox } from '../../../components/checkbox.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { costSheetQuery } from '../api/get-cost-sheet.ts';
import { scenariosQuery } from '../api/list-scenarios.ts';
import { workedCostSheetQuery } from '../api/work-out-cost-sheet.ts';
import { piecesWords } from '../components/class-rows.ts';
import { ScenarioComparison } from '../components/scenario-comparison.tsx';
import { MOST_COMPARED } from '../components/scenarios-section.tsx';
import '../components/trial.css';

/** Scenarios of a cost sheet side by side with the sheet as it stands. */
export function CompareScenariosScreen() {
  const { sheetId = '' } = useParams({ strict: false });
  const { with: named, shownFor } = useSearch({ strict: false });
  const navigate = useNavigate();
  const sheet = useQuery(costSheetQuery(sheetId));
  const worked = useQuery(workedCostSheetQuery(sheetId));
  const scenarios = useQuery(scenariosQuery(sheetId));
  const items = scenarios.data ?? [];
  const wanted = named?.split(',');
  const chosen = items
    .filter(({ id }) => wanted === undefined || wanted.includes(id))
    .slice(0, MOST_COMPARED);
  const columns = worked.data?.columns ?? [];
  const column = columns.find(({ quantity }) => String(quantity) === shownFor) ?? columns[0];
  const show = (ids: readonly string[], quantity: number | undefined): void =>
    void navigate({
      to: '/cost-sheets/$sheetId/scenarios',
      params: { sheetId },
      search: { with: ids.join(','), ...(quantity === undefined ? {} : { shownFor: String(quantity) }) },
      replace: true,
      resetScroll: false,
    });
  const chosenIds = chosen.map(({ id }) => id);
  const failed = [sheet, worked, scenarios].find(({ isError }) => isError);
  return (
    <Sheet>
      <SheetHeader
        title="Scenarios side by side"
        path={
          <>
            <Link to="/cost-sheets">Cost sheets</Link> /{' '}
            <Link to="/cost-sheets/$sheetId" params={{ sheetId }}>
              {sheet.data?.value.title ?? 'Cost sheet'}
            </Link>
          </>
        }
        facts={
          worked.data === undefined
            ? []
            : [
                { label: 'Prices of', value: worked.data.onDate },
                { label: 'Currency', value: worked.data.currency },
                { label: 'Shown for', value: column === undefined ? '' : piecesWords(column.quantity) },
              ]
        }
      />
      {(sheet.isPending || worked.isPending || scenarios.isPending) && <Loading label="Working out" />}
      {failed !== undefined && <ErrorNotice error={failed.error} retry={() => void failed.refetch()} />}
      {scenarios.data?.length === 0 && (
        <EmptyState
          title="No scenarios yet"
          action={
            <Link to="/cost-sheets/$sheetId" params={{ sheetId }} className="button">
              To the cost sheet
            </Link>
          }
        >
          Try other values on the cost sheet and keep them under a name; here they stand side by side.
        </EmptyState>
      )}
      {items.length > 0 && (
        <fieldset className="compare-choice">
          <legend>Beside the sheet as it stands, up to {MOST_COMPARED}</legend>
          {items.map(({ id, name }) => {
            const isChosen = chosenIds.includes(id);
            return (
              <Checkbox
                key={id}
                label={name}
                isSelected={isChosen}
                isDisabled={!isChosen && chosen.length >= MOST_COMPARED}
                onChange={() =>
                  show(
                    isChosen ? chosenIds.filter((one) => one !== id) : [...chosenIds, id],
                    column?.quantity,
                  )
                }
              />
            );
          })}
          {columns.length > 1 && (
            <Select
              label="Shown for"
              choices={columns.map(({ quantity }) => ({
                id: String(quantity),
                label: piecesWords(quantity),
              }))}
              value={String(column?.quantity)}
              onChange={(id) => show(chosenIds, Number(id))}
            />
          )}
        </fieldset>
      )}
      {sheet.data && worked.data && column && chosen.length > 0 && (
        <ScenarioComparison
          worked={worked.data}
          quantity={column.quantity}
          scenarios={chosen}
          system={sheet.data.value.unitSystem}
        />
      )}
    </Sheet>
  );
}
