import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useLocale } from 'react-aria-components';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section } from '../../../components/sheet.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { canTry, readLeaf } from '../../figures/leaf-text.ts';
import { solutionQuery } from '../api/solve-cost-sheet.ts';
import { QuestionFrame } from '../components/question-frame.tsx';
import { type SolveSearch, solveIn, withSearch } from '../components/question-search.ts';
import { SolveAnswer } from '../components/solve-answer.tsx';
import { SolveForm } from '../components/solve-form.tsx';
import { costForMargin, HELD, readTarget, readyQuestions } from '../components/solve-question.ts';
import type { HeldPrice } from '../components/solve-words.ts';
import { type AskedSheet, figureOf, useAskedSheet } from '../components/use-asked-sheet.ts';
import '../components/question.css';

interface Question {
  readonly leaf: string;
  readonly target: string;
  readonly held: HeldPrice | null;
  readonly ends: { readonly low?: string; readonly high?: string };
}

/** The question of the address; null where it asks none, or none that can be read. */
function questionOf(asked: AskedSheet, search: SolveSearch): Question | null {
  const { worked, column, result, sheet } = asked;
  const leaf = search.input === undefined ? undefined : worked.figures[search.input];
  const isHeld = search.result === HELD;
  const read = readTarget(search.target ?? '', isHeld || result.name === 'margin');
  if (leaf === undefined || !canTry(leaf) || 'problem' in read) return null;
  const ends = (['low', 'high'] as const).flatMap((name) => {
    const typed = search[name];
    const end = typed === undefined ? null : readLeaf(leaf, typed, sheet.unitSystem);
    return end !== null && 'value' in end ? [[name, end.value] as const] : [];
  });
  const price = figureOf(worked.figures, column.price.netPrice).value;
  return {
    leaf: leaf.id,
    target: isHeld ? costForMargin(price, read.value) : read.value,
    held: isHeld ? { price, margin: read.value } : null,
    ends: Object.fromEntries(ends),
  };
}

/** What an input of a cost sheet must be for a result that is wanted. */
export function SolveScreen() {
  const search = solveIn(useSearch({ strict: false }));
  const navigate = useNavigate();
  const { locale } = useLocale();
  const isHeld = search.result === HELD;
  const sheet = useAskedSheet(isHeld ? { ...search, result: 'cost' } : search);
  const { asked, sheetId } = sheet;
  const question = asked === null ? null : questionOf(asked, search);
  const query = useQuery({
    ...solutionQuery(sheetId, {
      quantity: asked?.column.quantity ?? 1,
      result: asked?.result.id ?? '',
      leaf: question?.leaf ?? '',
      target: { value: question?.target ?? '0' },
      ...question?.ends,
    }),
    enabled: question !== null,
  });
  const { errorFor, unplaced } = fieldErrors(query.error, [
    'leaf',
    'target',
    'target.value',
    'low',
    'high',
    'quantity',
    'result',
  ]);
  const ask = (changes: { readonly [K in keyof SolveSearch]?: string | undefined }): void =>
    void navigate({
      to: '/cost-sheets/$sheetId/solve',
      params: { sheetId },
      search: withSearch(search, changes),
      resetScroll: false,
    });
  return (
    <QuestionFrame
      title="What it takes"
      query={sheet}
      state={
        question === null
          ? 'not asked yet'
          : query.isFetching
            ? 'now ...'
            : query.isError
              ? 'failed'
              : 'as shown'
      }
      figures={query.data?.figures}
    >
      {(there) => (
        <>
          <SolveForm
            key={`${search.result} ${search.input} ${search.target} ${locale}`}
            asked={there}
            search={search}
            isHeld={isHeld}
            errorFor={errorFor}
            onAsk={ask}
          />
          {question === null && <Ready asked={there} />}
          {question !== null && query.isPending && <Loading label="Trying values" />}
          {query.isError && (
            <ErrorNotice error={query.error} errors={unplaced} retry={() => void query.refetch()} />
          )}
          {question !== null && query.data !== undefined && !query.isError && (
            <SolveAnswer asked={there} solution={query.data} target={question.target} held={question.held} />
          )}
        </>
      )}
    </QuestionFrame>
  );
}

function Ready({ asked }: { readonly asked: AskedSheet }) {
  return (
    <Section title="For example" note="asked of this sheet">
      <ul className="question-ready">
        {readyQuestions(asked).map(({ words, search }) => (
          <li key={words}>
            <Link to="/cost-sheets/$sheetId/solve" params={{ sheetId: asked.sheet.id }} search={search}>
              {words}
            </Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}
