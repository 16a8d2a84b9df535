import type { FigureNode, FigureTable } from '@scantling/figures';
import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useMemo } from 'react';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { fromPercent, plainDecimal } from '../../../lib/percent.ts';
import { riskQuery, type SheetRisk } from '../api/work-out-risk.ts';
import { estimatesIn } from '../components/estimate-words.ts';
import { QuestionFrame } from '../components/question-frame.tsx';
import { withSearch } from '../components/question-search.ts';
import { PERCENTILES, RiskAnswer, UncertainList } from '../components/risk-answer.tsx';
import { AddEstimate, type RiskChanges, RiskForm } from '../components/risk-form.tsx';
import {
  type RiskSearch,
  riskIn,
  USUAL_PERCENTILE,
  USUAL_SAMPLES,
  USUAL_SEED,
} from '../components/risk-search.ts';
import { leftFigures } from '../components/risk-words.ts';
import { TakeContingency } from '../components/take-contingency.tsx';
import { type AskedSheet, figureOf, useAskedSheet } from '../components/use-asked-sheet.ts';
import '../components/question.css';

const FIELDS = ['quoted.price', 'percentile', 'shape', 'samples', 'seed'];
const ASKED_PRICE = 'asked/price';

/** What is asked of the server; numbers that cannot be read go there to be named. */
function bodyOf(
  search: RiskSearch,
  quantity: number,
  uncertain: Parameters<typeof riskQuery>[1]['uncertain'],
) {
  return {
    quantity,
    ...(uncertain === undefined ? {} : { uncertain }),
    shape: search.shape === 'triangular' ? ('triangular' as const) : ('pert' as const),
    doHoursMoveTogether: search.alone === undefined,
    samples: Number(search.samples ?? USUAL_SAMPLES),
    seed: Number(search.seed ?? USUAL_SEED),
    percentile: fromPercent(search.percentile ?? USUAL_PERCENTILE),
    quoted: search.price === undefined ? {} : { price: plainDecimal(search.price) },
  };
}

/** How sure the cost of a sheet is when some of its values are only known from low to high. */
export function RiskScreen() {
  const search = riskIn(useSearch({ strict: false }));
  const navigate = useNavigate();
  const sheet = useAskedSheet({ ...search, result: 'cost' });
  const { asked, sheetId } = sheet;
  const given = search.estimates ?? [];
  const standing = useMemo(() => (asked === null ? [] : estimatesIn(asked.worked.figures)), [asked]);
  const uncertain = Object.fromEntries(
    given
      .filter(({ id }) => asked?.worked.figures[id] !== undefined)
      .map(({ id, group, ...points }) => [id, group === undefined ? points : { ...points, group }] as const),
  );
  const hasAny = standing.length > 0 || Object.keys(uncertain).length > 0;
  const query = useQuery({
    ...riskQuery(sheetId, bodyOf(search, asked?.column.quantity ?? 1, uncertain)),
    enabled: asked !== null && hasAny,
  });
  const { errorFor, unplaced } = fieldErrors(query.error, FIELDS);
  const ask = (changes: RiskChanges): void =>
    void navigate({
      to: '/cost-sheets/$sheetId/risk',
      params: { sheetId },
      search: withSearch(search, changes),
      replace: true,
      resetScroll: false,
    });
  const give = (estimates: RiskSearch['estimates']): void =>
    ask({ estimates: estimates?.length === 0 ? undefined : estimates });
  const answer = asked === null || query.data === undefined ? null : answerFigures(asked, query.data, search);
  return (
    <QuestionFrame
      title="How sure it is"
      query={sheet}
      state={query.isFetching ? 'now ...' : query.isError ? 'failed' : hasAny ? 'as shown' : 'not asked yet'}
      figures={answer?.figures}
    >
      {(there) => (
        <>
          <Section
            title="What is not certain"
            note="times of the bill with a low and a high come by themselves"
          >
            {!hasAny && (
              <EmptyState title="Nothing is known from low to high yet">
                Give an input its least, likely and greatest value below, or enter low and high times with the
                operations of the design.
              </EmptyState>
            )}
            {answer !== null && query.data && (
              <UncertainList asked={there} risk={query.data} given={given} onGive={give} />
            )}
            <AddEstimate asked={there} given={given} onGive={give} />
          </Section>
          <RiskForm asked={there} search={search} errorFor={errorFor} onAsk={ask} />
          {hasAny && query.isPending && (
            <Loading label={`Working the sheet out ${search.samples ?? USUAL_SAMPLES} times`} />
          )}
          {query.isError && (
            <ErrorNotice error={query.error} errors={unplaced} retry={() => void query.refetch()} />
          )}
          {answer !== null && query.data && !query.isError && (
            <Answer asked={there} risk={query.data} answer={answer} search={search} />
          )}
        </>
      )}
    </QuestionFrame>
  );
}

interface AnswerFigures {
  readonly figures: FigureTable;
  readonly priceId: string;
}

/** The figures of the answer with what the price leaves at each share of the runs. */
function answerFigures({ worked, column }: AskedSheet, risk: SheetRisk, search: RiskSearch): AnswerFigures {
  const spread = risk.results[0]?.spread;
  const own = figureOf(worked.figures, column.price.netPrice);
  const price: FigureNode =
    search.price === undefined
      ? own
      : {
          id: ASKED_PRICE,
          label: 'price that is quoted',
          unit: 'money',
          currency: own.currency,
          value: plainDecimal(search.price),
          source: { kind: 'entered', text: 'entered for this question' },
        };
  const table: Record<string, FigureNode> = { ...risk.figures, [price.id]: price };
  if (spread === null || spread === undefined) return { figures: table, priceId: price.id };
  for (const name of PERCENTILES) {
    const { left, margin } = leftFigures(name, price, figureOf(risk.figures, spread[name]));
    table[left.id] = left;
    if (margin !== null) table[margin.id] = margin;
  }
  return { figures: table, priceId: price.id };
}

interface AnswerProps {
  readonly asked: AskedSheet;
  readonly risk: SheetRisk;
  readonly answer: AnswerFigures;
  readonly search: RiskSearch;
}

function Answer({ asked, risk, answer, search }: AnswerProps) {
  const spread = risk.results[0]?.spread ?? null;
  const percentile = fromPercent(search.percentile ?? USUAL_PERCENTILE);
  if (spread === null)
    return (
      <EmptyState title="No run had an answer">
        The values drawn leave the cost without an answer: narrow their range.
      </EmptyState>
    );
  const table = { ...answer.figures, ...asked.worked.figures };
  return (
    <>
      <RiskAnswer
        asked={asked}
        risk={risk}
        spread={spread}
        table={table}
        priceId={answer.priceId}
        percentile={percentile}
      />
      <TakeContingency
        asked={asked}
        percentile={figureOf(risk.figures, spread.percentile).value}
        share={percentile}
      />
    </>
  );
}
