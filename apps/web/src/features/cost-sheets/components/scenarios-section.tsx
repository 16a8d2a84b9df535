import { removeScenario, type Scenario, triedResults, type WorkedCostSheet } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { Checkbox } from '../../../components/checkbox.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { RemoveAct } from '../../../components/record-editor/remove-act.tsx';
import { Section } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { scenariosQuery } from '../api/list-scenarios.ts';
import { useRemoveScenario } from '../api/remove-scenario.ts';
import { movedWords, resultWords } from './result-words.ts';
import { withScenario } from './scenario-changes.ts';
import './trial.css';

export const MOST_COMPARED = 4;

interface ScenariosProps {
  readonly sheetId: string;
  /** The sheet as it is kept. */
  readonly worked: WorkedCostSheet;
  readonly quantity: number;
  readonly onTry: (scenario: Scenario) => void;
}

/** The scenarios kept of a sheet, worked out on it as it is now; up to four are compared. */
export function ScenariosSection({ sheetId, worked, quantity, onTry }: ScenariosProps) {
  const scenarios = useQuery(scenariosQuery(sheetId));
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  if (scenarios.isError)
    return <ErrorNotice error={scenarios.error} retry={() => void scenarios.refetch()} />;
  const items = scenarios.data ?? [];
  if (items.length === 0) return null;
  // The first four are chosen until somebody chooses otherwise.
  const chosen = items.filter(({ id }) => !left.has(id)).slice(0, MOST_COMPARED);
  const toggle = (id: string): void => {
    const isIn = chosen.some((one) => one.id === id);
    const others = items.filter((one) => !chosen.includes(one)).map((one) => one.id);
    setLeft(new Set(isIn ? [...others, id] : others.filter((one) => one !== id)));
  };
  return (
    <Section
      title="Scenarios"
      note="values tried together, worked out on the sheet as it is today"
      actions={
        <Link
          to="/cost-sheets/$sheetId/scenarios"
          params={{ sheetId }}
          search={{ with: chosen.map(({ id }) => id).join(','), shownFor: String(quantity) }}
          className="button"
        >
          Compare side by side
        </Link>
      }
    >
      <div className="trial-table-frame">
        <table className="trial-table">
          <caption className="visually-hidden">Scenarios of this sheet</caption>
          <thead>
            <tr>
              <th scope="col">Compare</th>
              <th scope="col">Scenario</th>
              <th scope="col" className="numeric">
                Net price
              </th>
              <th scope="col">
                <span className="visually-hidden">Acts</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {items.map((scenario) => {
              const isChosen = chosen.includes(scenario);
              return (
                <tr key={scenario.id}>
                  <td>
                    <Checkbox
                      label={`Compare ${scenario.name}`}
                      isLabelHidden
                      isSelected={isChosen}
                      isDisabled={!isChosen && chosen.length >= MOST_COMPARED}
                      onChange={() => toggle(scenario.id)}
                    />
                  </td>
                  <th scope="row">
                    {scenario.name}
                    <span className="trial-note">
                      {scenario.note === '' ? '' : `${scenario.note} `}
                      {scenario.changes.length === 1 ? '1 value' : `${scenario.changes.length} values`}, by{' '}
                      {scenario.madeBy} on {scenario.updatedAt.slice(0, 10)}
                    </span>
                  </th>
                  <td className="numeric">
                    <Outcome scenario={scenario} worked={worked} quantity={quantity} />
                  </td>
                  <td>
                    <div className="trial-buttons">
                      <Button
                        look="quiet"
                        aria-label={`Try ${scenario.name}`}
                        onPress={() => onTry(scenario)}
                      >
                        Try it
                      </Button>
                      <RemoveScenario scenario={scenario} />
                    </div>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {items.length > MOST_COMPARED && (
        <p className="trial-note">
          Up to {MOST_COMPARED} stand side by side: leave one out to choose another.
        </p>
      )}
    </Section>
  );
}

interface OutcomeProps {
  readonly scenario: Scenario;
  readonly worked: WorkedCostSheet;
  readonly quantity: number;
}

function Outcome({ scenario, worked, quantity }: OutcomeProps) {
  const { locale } = useLocale();
  const made = withScenario(worked, scenario);
  const column = worked.columns.find((one) => one.quantity === quantity) ?? worked.columns[0];
  if (made === null) return <span className="trial-gone">no answer</span>;
  const net = column && triedResults(column, made.tried).find(({ name }) => name === 'netPrice');
  const node = net && made.tried.table[net.figure];
  if (net === undefined || node === undefined) return null;
  return (
    <>
      {resultWords('netPrice', net.now, node, locale)}
      <span className="trial-moved">{movedWords(net, node, locale)}</span>
      {made.tried.gone.length > 0 && (
        <span className="trial-note trial-gone">
          {made.tried.gone.length} of its values have no place on the sheet any more
        </span>
      )}
    </>
  );
}

function RemoveScenario({ scenario }: { readonly scenario: Scenario }) {
  const remove = useRemoveScenario();
  const canRemove = useMayCall(removeScenario);
  if (!canRemove) return null;
  return (
    <RemoveAct
      title={`Remove “${scenario.name}”?`}
      consequence="The cost sheet stays as it is; the values kept here are gone for good."
      isPending={remove.isPending}
      error={remove.error}
      onRemove={() => remove.mutate({ id: scenario.id, version: scenario.version })}
    />
  );
}
