import type { FigureTable } from '@scantling/figures';
import { Link } from '@tanstack/react-router';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { Figures } from '../../figures/figures.tsx';
import { piecesWords } from './class-rows.ts';
import { costingProblem } from './costing-problem.ts';
import { QuestionLinks } from './question-links.tsx';
import type { AskedSheet, AskedSheetQuery } from './use-asked-sheet.ts';

interface QuestionFrameProps {
  readonly title: string;
  readonly query: AskedSheetQuery;
  /** How the answer stands: "now ...", "as shown". */
  readonly state: string;
  /** The answer's own figures, beside those of the sheet. */
  readonly figures: FigureTable | undefined;
  readonly children: (asked: AskedSheet) => React.ReactNode;
}

/** The sheet a question to a cost sheet is asked and answered on. */
export function QuestionFrame({ title, query, state, figures, children }: QuestionFrameProps) {
  const { asked, sheetId, error } = query;
  const body = (
    <Sheet>
      <SheetHeader
        title={title}
        path={
          <>
            <Link to="/cost-sheets">Cost sheets</Link> /{' '}
            <Link to="/cost-sheets/$sheetId" params={{ sheetId }}>
              {query.title}
            </Link>
          </>
        }
        facts={
          asked === null
            ? []
            : [
                { label: 'Design', value: asked.sheet.designName },
                { label: 'Pieces', value: piecesWords(asked.column.quantity) },
                { label: 'Prices of', value: asked.worked.onDate },
                { label: 'Currency', value: asked.worked.currency },
                { label: 'Worked out', value: state },
              ]
        }
        actions={<QuestionLinks sheetId={sheetId} />}
      />
      {error !== null && (
        <ErrorNotice
          error={error instanceof ApiProblem ? costingProblem(error) : error}
          retry={query.retry}
        />
      )}
      {asked === null && error === null && <Loading label="Working out" />}
      {asked !== null && children(asked)}
    </Sheet>
  );
  if (asked === null) return body;
  return (
    // A figure of both stands with its working, which the answer leaves out.
    <Figures
      table={{ ...figures, ...asked.worked.figures }}
      ownAddress={(record) => (record.startsWith('bill:') ? `/designs/${asked.sheet.designId}` : undefined)}
    >
      {body}
    </Figures>
  );
}
