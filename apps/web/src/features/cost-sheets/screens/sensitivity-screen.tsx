import { findThreePoints, prepareTable } from '@scantling/figures';
import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { fromPercent } from '../../../lib/percent.ts';
import { type Moves, sensitivityQuery } from '../api/work-out-sensitivity.ts';
import { LeftOut } from '../components/left-out.tsx';
import { MovesChart } from '../components/moves-chart.tsx';
import { MovesForm } from '../components/moves-form.tsx';
import { movesShape } from '../components/moves-shape.ts';
import { headline } from '../components/moves-words.ts';
import { priceFollowsWords } from '../components/price-rule.ts';
import { QuestionFrame } from '../components/question-frame.tsx';
import { sensitivityIn, withSearch } from '../components/question-search.ts';
import { RESULT_LABELS } from '../components/result-words.ts';
import { type AskedSheet, useAskedSheet } from '../components/use-asked-sheet.ts';
import '../components/question.css';

const FEW_ROWS = 12;
const MANY_ROWS = 60;
const USUAL_MOVE = '10';

/** Which values of a cost sheet move its price, cost or earnings most. */
export function SensitivityScreen() {
  const search = sensitivityIn(useSearch({ strict: false }));
  const navigate = useNavigate();
  const sheet = useAskedSheet(search);
  const { asked, sheetId } = sheet;
  const move = search.move ?? USUAL_MOVE;
  const query = useQuery({
    ...sensitivityQuery(sheetId, {
      quantity: asked?.column.quantity ?? 1,
      result: asked?.result.id ?? '',
      move: fromPercent(move),
      usesThreePoints: search.ranges !== 'share',
      most: search.rows === 'many' ? MANY_ROWS : FEW_ROWS,
    }),
    enabled: asked !== null,
  });
  const figures = asked?.worked.figures;
  const hasRanges = useMemo(
    () => figures !== undefined && findThreePoints(prepareTable(figures)).length > 0,
    [figures],
  );
  const { errorFor, unplaced } = fieldErrors(query.error, ['move', 'quantity', 'result']);
  const ask = (changes: { readonly [K in keyof typeof search]?: string | undefined }): void =>
    void navigate({
      to: '/cost-sheets/$sheetId/sensitivity',
      params: { sheetId },
      search: withSearch(search, changes),
      replace: true,
      resetScroll: false,
    });
  return (
    <QuestionFrame
      title="What moves it"
      query={sheet}
      state={query.isFetching ? 'now ...' : query.isError ? 'failed' : 'as shown'}
      figures={query.data?.figures}
    >
      {(there) => (
        <>
          <MovesForm
            asked={there}
            move={move}
            usesRanges={search.ranges !== 'share'}
            hasRanges={hasRanges}
            errorFor={errorFor}
            onAsk={ask}
          />
          {query.isPending && <Loading label="Moving each value" />}
          {query.isError && (
            <ErrorNotice error={query.error} errors={unplaced} retry={() => void query.refetch()} />
          )}
          {query.data?.result === there.result.id && !query.isError && (
            <Answer asked={there} moves={query.data} onMore={() => ask({ rows: 'many' })} />
          )}
        </>
      )}
    </QuestionFrame>
  );
}

interface AnswerProps {
  readonly asked: AskedSheet;
  readonly moves: Moves;
  readonly onMore: () => void;
}

function Answer({ asked, moves, onMore }: AnswerProps) {
  const { locale } = useLocale();
  const { name, id } = asked.result;
  const table = { ...moves.figures, ...asked.worked.figures };
  const voice = { table, now: asked.now, name, system: asked.sheet.unitSystem, locale };
  const shape = movesShape(table, id, moves.rows);
  const follows = priceFollowsWords(asked.sheet.terms.policy, name);
  return (
    <Section
      title={`What moves the ${RESULT_LABELS[name].toLowerCase()} most`}
      note="sensitivity; the trade calls the drawing a tornado"
    >
      <p className="question-answer" role="status">
        {headline(
          voice,
          shape.bars.map(({ row }) => row),
        )}
      </p>
      {follows !== null && <p className="question-note">{follows}</p>}
      {shape.bars.length > 0 && <MovesChart voice={voice} shape={shape} resultId={id} />}
      {moves.more > 0 && (
        <p className="question-more">
          {moves.more === 1 ? '1 more value moves' : `${moves.more} more values move`} it as little or less.{' '}
          {moves.rows.length < MANY_ROWS && <Button onPress={onMore}>Show more of them</Button>}
        </p>
      )}
      <LeftOut moves={moves} shape={shape} voice={voice} />
    </Section>
  );
}
