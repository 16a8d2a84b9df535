import { type Scenario, type SheetResult, triedResults, type WorkedCostSheet } from '@scantling/contracts';
import { type FigureNode, type TriedTable, tryValues, undatedKey } from '@scantling/figures';
import type { LengthSystem } from '@scantling/units';
import { useMemo } from 'react';
import { useLocale } from 'react-aria-components';
import { StackedBar } from '../../../components/charts/stacked-bar.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney } from '../../../lib/format.ts';
import { leafWords } from '../../figures/leaf-text.ts';
import { COMPOSITION_SERIES, composition } from './composition.ts';
import { movedWords, RESULT_LABELS, resultWords } from './result-words.ts';
import { withScenario } from './scenario-changes.ts';
import './trial.css';

interface ComparisonProps {
  readonly worked: WorkedCostSheet;
  readonly quantity: number;
  readonly scenarios: readonly Scenario[];
  readonly system: LengthSystem;
}

interface Side {
  readonly id: string;
  readonly name: string;
  /** Null where its values leave no answer. */
  readonly tried: TriedTable | null;
  readonly results: readonly SheetResult[];
}

/** Results, what they are made of, and the inputs that differ: the sheet as it stands first, each scenario beside it. */
export function ScenarioComparison({ worked, quantity, scenarios, system }: ComparisonProps) {
  const { locale } = useLocale();
  const column = worked.columns.find((one) => one.quantity === quantity);
  const sides = useMemo((): Side[] => {
    if (column === undefined) return [];
    const standing = tryValues(worked.figures, {});
    return [
      { id: 'standing', name: 'As it stands', tried: standing, results: triedResults(column, standing) },
      ...scenarios.map((scenario) => {
        const made = withScenario(worked, scenario);
        const { id, name } = scenario;
        return made === null
          ? { id, name, tried: null, results: [] }
          : { id, name, tried: made.tried, results: triedResults(column, made.tried) };
      }),
    ];
  }, [worked, column, scenarios]);
  if (column === undefined) return null;
  const bars = sides.flatMap(({ name, tried }) =>
    tried === null
      ? []
      : composition({ ...worked, columns: [column], figures: tried.table }).map((bar) => ({
          ...bar,
          label: name,
        })),
  );
  return (
    <>
      <Section title="Results" note="with the difference to the sheet as it stands">
        <div className="trial-table-frame">
          <table className="trial-table compare-table" style={widthFor(sides)}>
            <caption className="visually-hidden">Results side by side</caption>
            <Heads sides={sides} first="Result" />
            <tbody>
              {sides[0]?.results.map(({ name, figure }) => (
                <tr key={name}>
                  <th scope="row">{RESULT_LABELS[name]}</th>
                  {sides.map((side) => (
                    <ResultCell
                      key={side.id}
                      result={side.results.find((one) => one.name === name)}
                      node={worked.figures[figure]}
                      isStanding={side.id === 'standing'}
                      locale={locale}
                    />
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </Section>
      <Section title="Where the money goes">
        <StackedBar
          label="Net price of one piece, by what it pays for"
          barHead="Scenario"
          series={COMPOSITION_SERIES}
          bars={bars}
          write={(amount) => formatMoney(amount, worked.currency, { locale })}
        />
      </Section>
      <InputsThatDiffer worked={worked} sides={sides} scenarios={scenarios} system={system} />
    </>
  );
}

/** As wide as its columns ask for. */
function widthFor({ length }: readonly Side[]): React.CSSProperties {
  return { maxWidth: `calc(24rem + ${length} * 12rem)` };
}

function Heads({ sides, first }: { readonly sides: readonly Side[]; readonly first: string }) {
  return (
    <thead>
      <tr>
        <th scope="col">{first}</th>
        {sides.map(({ id, name }) => (
          <th key={id} scope="col" className="numeric">
            {name}
          </th>
        ))}
      </tr>
    </thead>
  );
}

interface ResultCellProps {
  readonly result: SheetResult | undefined;
  readonly node: FigureNode | undefined;
  readonly isStanding: boolean;
  readonly locale: string;
}

function ResultCell({ result, node, isStanding, locale }: ResultCellProps) {
  if (result === undefined || node === undefined) return <td className="numeric trial-gone">no answer</td>;
  return (
    <td className="numeric">
      {resultWords(result.name, result.now, node, locale)}
      {!isStanding && <span className="trial-moved">{movedWords(result, node, locale)}</span>}
    </td>
  );
}

type InputsProps = Omit<ComparisonProps, 'quantity'> & { readonly sides: readonly Side[] };

function InputsThatDiffer({ worked, sides, scenarios, system }: InputsProps) {
  const { locale } = useLocale();
  const byKey = new Map(
    Object.values(worked.figures).flatMap((node) =>
      node.source === undefined ? [] : [[undatedKey(node.id), node] as const],
    ),
  );
  const labels = new Map(
    scenarios.flatMap(({ changes }) => changes.map(({ leaf, label }) => [undatedKey(leaf), label] as const)),
  );
  const givenFor = (scenario: Scenario | undefined, key: string): string | undefined =>
    scenario?.changes.find(({ leaf }) => undatedKey(leaf) === key)?.value;
  return (
    <Section title="Inputs that differ" note="an empty cell is as it stands">
      <div className="trial-table-frame">
        <table className="trial-table compare-table" style={widthFor(sides)}>
          <caption className="visually-hidden">Inputs that differ</caption>
          <Heads sides={sides} first="Input" />
          <tbody>
            {[...labels].map(([key, label]) => {
              const node = byKey.get(key);
              const words = (value: string | undefined): string =>
                value === undefined
                  ? ''
                  : node === undefined
                    ? value
                    : leafWords(node, value, system, locale);
              return (
                <tr key={key}>
                  <th scope="row">
                    {node?.label ?? label}
                    <span className={`trial-note${node === undefined ? ' trial-gone' : ''}`}>
                      {node?.source?.text ?? 'the sheet does not rest on it any more'}
                    </span>
                  </th>
                  {sides.map(({ id }) => (
                    <td key={id} className="numeric">
                      {id === 'standing'
                        ? words(node?.value)
                        : words(
                            givenFor(
                              scenarios.find((one) => one.id === id),
                              key,
                            ),
                          )}
                    </td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </Section>
  );
}
