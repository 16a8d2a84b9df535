import type { AnswerOf, compareCostSheets } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { CostDifference } from '../../cost-difference/cost-difference.tsx';
import { differenceTables } from '../../cost-difference/difference-tables.ts';
import { FigureValue } from '../../figures/figure-value.tsx';
import { Figures } from '../../figures/figures.tsx';
import { mergedId, mergeTables } from '../../figures/merge-tables.ts';
import { type Comparison, comparisonQuery } from '../api/compare-cost-sheets.ts';
import { type CostSheetRecord, costSheetQuery } from '../api/get-cost-sheet.ts';
import { piecesWords } from '../components/class-rows.ts';
import { ComparisonForm } from '../components/comparison-form.tsx';
import { comparisonIn } from '../components/comparison-search.ts';
import { costingProblem } from '../components/costing-problem.ts';
import '../components/cost-sheet.css';

type Compared = AnswerOf<typeof compareCostSheets>;

/** One cost sheet beside another, or beside itself otherwise: what differs, why, and the money it moves. */
export function CompareScreen() {
  const { sheetId = '' } = useParams({ strict: false });
  const sheet = useQuery(costSheetQuery(sheetId));
  if (sheet.data !== undefined) return <ComparedSheets key={sheetId} sheet={sheet.data.value} />;
  return (
    <Sheet>
      <SheetHeader title="Compare" path={<Link to="/cost-sheets">Cost sheets</Link>} />
      {sheet.isError ? <ErrorNotice error={sheet.error} retry={() => void sheet.refetch()} /> : <Loading />}
    </Sheet>
  );
}

const inAnswer = (id: string): string => mergedId('compared', id);

function ComparedSheets({ sheet }: { readonly sheet: CostSheetRecord }) {
  const chosen = comparisonIn(useSearch({ strict: false }));
  const navigate = useNavigate();
  const query = useQuery(comparisonQuery(sheet.id, chosen));
  const problem = query.error instanceof ApiProblem ? costingProblem(query.error) : query.error;
  const { errorFor } = fieldErrors(query.error, ['with', 'onDate', 'basis', 'variant', 'revision', 'pieces']);
  const compared = query.data;
  const choose = (next: Comparison): void =>
    void navigate({
      to: '/cost-sheets/$sheetId/compare',
      params: { sheetId: sheet.id },
      search: next,
      replace: true,
      resetScroll: false,
    });
  const body = (
    <Sheet>
      <SheetHeader
        title={`Compare: ${sheet.title}`}
        path={
          <Link to="/cost-sheets/$sheetId" params={{ sheetId: sheet.id }}>
            {sheet.title}
          </Link>
        }
        facts={[
          { label: 'Design', value: sheet.designName },
          { label: 'Pieces', value: compared === undefined ? '' : piecesWords(compared.pieces) },
          { label: 'Currency', value: compared?.difference.currency ?? '' },
          {
            label: 'Worked out',
            value: query.isFetching ? 'now ...' : query.isError ? 'failed' : 'as shown',
          },
        ]}
      />
      <ComparisonForm sheet={sheet} chosen={chosen} onChoose={choose} errorFor={errorFor} />
      {query.isPending && <Loading label="Comparing" />}
      {query.isError && <ErrorNotice error={problem} retry={() => void query.refetch()} />}
      {compared && !query.isError && <Answer compared={compared} />}
    </Sheet>
  );
  if (compared === undefined) return body;
  const table = mergeTables({ compared: compared.figures, ...differenceTables(compared.difference) });
  return (
    <Figures
      table={table}
      ownAddress={(record) => (record.startsWith('bill:') ? `/designs/${compared.now.designId}` : undefined)}
    >
      {body}
    </Figures>
  );
}

const SIDE_ROWS: readonly (readonly [string, (side: Compared['was']) => React.ReactNode])[] = [
  [
    'Cost sheet',
    (side) => (
      <Link to="/cost-sheets/$sheetId" params={{ sheetId: side.costSheetId }}>
        {side.title}
      </Link>
    ),
  ],
  ['Design', (side) => `${side.designName}, revision ${side.revision}, ${side.variant ?? 'as drawn'}`],
  ['Prices of', (side) => side.onDate],
  ['Basis', (side) => side.basis],
];

function Answer({ compared }: { readonly compared: Compared }) {
  const { was, now, difference } = compared;
  return (
    <>
      <Section title="The two sides">
        <div className="sides-frame">
          <table className="sides">
            <thead>
              <tr>
                <td />
                <th scope="col">This sheet</th>
                <th scope="col">The other</th>
              </tr>
            </thead>
            <tbody>
              {SIDE_ROWS.map(([label, write]) => (
                <tr key={label}>
                  <th scope="row">{label}</th>
                  <td>{write(was)}</td>
                  <td>{write(now)}</td>
                </tr>
              ))}
              {(['cost', 'price'] as const).map((total) => (
                <tr key={total}>
                  <th scope="row">{total === 'cost' ? 'Cost of production' : 'Net price'}</th>
                  <td>
                    <FigureValue id={inAnswer(difference.was[total])} look="total" />
                  </td>
                  <td>
                    <FigureValue id={inAnswer(difference.now[total])} look="total" />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
        {(!was.isComplete || !now.isComplete) && (
          <p className="sides-warning">
            Not complete: a material of {was.isComplete ? 'the other sheet' : 'this sheet'} has no price, so
            its cost and price are too low.
          </p>
        )}
      </Section>
      <Section title="What moved" note="the largest move of the cost first, under its cause">
        <CostDifference difference={difference} named={inAnswer} was="This sheet" now="The other" />
      </Section>
    </>
  );
}
