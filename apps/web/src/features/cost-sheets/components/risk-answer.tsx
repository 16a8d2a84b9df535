import type { FigureTable } from '@scantling/figures';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { Histogram } from '../../../components/charts/histogram.tsx';
import { RuledFrame } from '../../../components/ruled-frame.tsx';
import { Section } from '../../../components/sheet.tsx';
import { formatMoney, formatPercent } from '../../../lib/format.ts';
import { FigureValue } from '../../figures/figure-value.tsx';
import { isShare } from '../../figures/leaf-text.ts';
import type { SheetRisk } from '../api/work-out-risk.ts';
import { piecesWords } from './class-rows.ts';
import type { GivenEstimate } from './risk-search.ts';
import { riskWords, runsWords } from './risk-words.ts';
import type { AskedSheet } from './use-asked-sheet.ts';
import './question.css';

type Spread = NonNullable<SheetRisk['results'][number]['spread']>;

export const PERCENTILES = ['p10', 'p50', 'p80', 'p90'] as const;
const SHARES = { p10: '0.1', p50: '0.5', p80: '0.8', p90: '0.9' } as const;

interface RiskAnswerProps {
  readonly asked: AskedSheet;
  readonly risk: SheetRisk;
  readonly spread: Spread;
  /** The sheet's figures, those of the answer, and what is left of the price. */
  readonly table: FigureTable;
  readonly priceId: string;
  /** The share of runs to be covered, as decimal text. */
  readonly percentile: string;
}

function amountOf(table: FigureTable, id: string): string {
  return table[id]?.value ?? '0';
}

/** What the runs come to: in words, by share of runs, and drawn. */
export function RiskAnswer({ asked, risk, spread, table, priceId, percentile }: RiskAnswerProps) {
  const { locale } = useLocale();
  const { worked, sheet, column } = asked;
  const money = (value: string): string => formatMoney(value, worked.currency, { locale });
  const percent = (share: number): string => formatPercent(share, 1, { locale, places: 0 });
  const price = amountOf(table, priceId);
  const { chances, samples, seed } = risk;
  const withoutAnswer = risk.results[0]?.withoutAnswer ?? 0;
  const words = riskWords({
    what: sheet.designName,
    isOne: column.quantity === 1,
    percentile,
    cost: money(amountOf(table, spread.percentile)),
    price: money(price),
    ofLoss: chances === null ? null : amountOf(table, chances.ofLoss),
    locale,
  });
  const label = `Cost of production of ${piecesWords(column.quantity)}, by share of the runs`;
  return (
    <Section
      title="How sure the cost is"
      note={`${samples.toLocaleString(locale)} runs, seed ${seed}; without the contingency of the terms`}
    >
      <p className="question-answer" role="status">
        {words}
      </p>
      <RuledFrame label={label}>
        <table className="ruled-rows">
          <caption className="visually-hidden">{label}</caption>
          <thead>
            <tr>
              <th scope="col">In this share of runs</th>
              <th scope="col" className="numeric">
                the cost is at most
              </th>
              <th scope="col" className="numeric">
                and the price leaves at least
              </th>
              <th scope="col" className="numeric">
                Margin
              </th>
            </tr>
          </thead>
          <tbody>
            {PERCENTILES.map((name) => (
              <tr key={name}>
                <th scope="row" className="ruled-name">
                  {runsWords(SHARES[name], locale)}{' '}
                  <span className="question-term">{name.toUpperCase()}</span>
                </th>
                <td className="numeric">
                  <FigureValue id={spread[name]} />
                </td>
                <td className="numeric">
                  <FigureValue id={`left/${name}`} />
                </td>
                <td className="numeric">
                  {table[`left/${name}/margin`] ? (
                    <FigureValue id={`left/${name}/margin`} isPercent />
                  ) : (
                    'no price'
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </RuledFrame>
      <p>
        On average <FigureValue id={spread.mean} />, with a standard deviation of{' '}
        <FigureValue id={spread.sd} />
        {chances !== null && (
          <>
            ; chance of a loss at <FigureValue id={priceId} />: <FigureValue id={chances.ofLoss} isPercent />
          </>
        )}
        .{withoutAnswer > 0 && ` ${withoutAnswer} runs had no answer and are left out.`}
      </p>
      <Histogram
        label="Runs by what the cost comes to"
        axisLabel="Cost of production"
        counted="Runs"
        {...spread.histogram}
        marks={[
          { label: `${percent(Number(percentile))} of the runs`, at: amountOf(table, spread.percentile) },
          { label: 'the price', at: price },
        ]}
        write={money}
        writeShare={percent}
      />
    </Section>
  );
}

interface UncertainListProps {
  readonly asked: AskedSheet;
  readonly risk: SheetRisk;
  readonly given: readonly GivenEstimate[];
  readonly onGive: (estimates: readonly GivenEstimate[]) => void;
}

/** Every value that is drawn, where its three points come from, and how much of the spread it makes. */
export function UncertainList({ asked, risk, given, onGive }: UncertainListProps) {
  const { locale } = useLocale();
  const { worked, sheet } = asked;
  const shares = risk.results[0]?.shares ?? [];
  const shareOf = (name: string, group: string | null): string => {
    const found = shares.find((one) => one.isGroup === (group !== null) && one.name === (group ?? name));
    return found === undefined ? '' : formatPercent(found.share, 1, { locale, places: 0 });
  };
  const isInInches = sheet.unitSystem === 'imperial';
  return (
    <RuledFrame label="What is not certain">
      <table className="ruled-rows">
        <caption className="visually-hidden">What is not certain</caption>
        <thead>
          <tr>
            <th scope="col">Value</th>
            <th scope="col" className="numeric">
              At the least
            </th>
            <th scope="col" className="numeric">
              Likely
            </th>
            <th scope="col" className="numeric">
              At the most
            </th>
            <th scope="col" className="numeric">
              Part of the spread
            </th>
            <th scope="col">From</th>
          </tr>
        </thead>
        <tbody>
          {risk.uncertain.map(({ figure, low, likely, high, group }) => {
            const leaf = worked.figures[figure] ?? risk.figures[figure];
            const isGiven = given.some(({ id }) => id === figure);
            const isPercent = leaf !== undefined && isShare(leaf);
            return (
              <tr key={figure}>
                <th scope="row" className="ruled-name">
                  {leaf?.label}
                </th>
                {[low, likely, high].map((id) => (
                  <td key={id} className="numeric">
                    <FigureValue id={id} isPercent={isPercent} isInInches={isInInches} />
                  </td>
                ))}
                <td className="numeric">
                  {shareOf(figure, group)}
                  {group !== null && ` (all ${group})`}
                </td>
                <td>
                  {isGiven ? (
                    <Button
                      look="quiet"
                      aria-label={`Leave out ${leaf?.label ?? figure}`}
                      onPress={() => onGive(given.filter(({ id }) => id !== figure))}
                    >
                      given here; leave out
                    </Button>
                  ) : (
                    'bill of materials'
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </RuledFrame>
  );
}
