import { ApiProblem, type FieldError } from '../lib/api-problem.ts';
import { sentence } from '../lib/sentence.ts';
import { Button } from './button.tsx';
import './notices.css';

export interface EmptyStateProps {
  /** What will stand here. */
  readonly title: string;
  /** How it gets here. */
  readonly children?: React.ReactNode;
  readonly action?: React.ReactNode;
}

export function EmptyState({ title, children, action }: EmptyStateProps) {
  return (
    <div className="empty-state">
      <p className="empty-title">{title}</p>
      {children !== undefined && <p>{children}</p>}
      {action}
    </div>
  );
}

export interface ErrorNoticeProps {
  readonly error: unknown;
  readonly retry?: () => void;
  /** The errors to list; all of the problem's where absent. A form passes those that no field shows. */
  readonly errors?: readonly FieldError[];
}

/** What failed and what to mend. Takes any error; knows problem details. */
export function ErrorNotice({ error, retry, errors }: ErrorNoticeProps) {
  const problem = error instanceof ApiProblem ? error : null;
  const listed = errors ?? problem?.errors ?? [];
  return (
    <div role="alert" className="error-notice">
      <p className="error-title">{problem?.title ?? 'This page failed'}</p>
      {problem?.detail && !problem.detail.startsWith(problem.title) && <p>{problem.detail}</p>}
      {problem === null && <p>{error instanceof Error ? error.message : String(error)}</p>}
      {listed.length > 0 && (
        <ul>
          {listed.map((one) => (
            <li key={`${one.field} ${one.message}`}>
              {sentence(one.field, one.message)} {one.mend}
            </li>
          ))}
        </ul>
      )}
      {problem?.instance && problem.status >= 500 && (
        <p className="error-request">Request {problem.instance}</p>
      )}
      {retry && <Button onPress={retry}>Try again</Button>}
    </div>
  );
}

/** What is shown rests on older input. */
export function StaleNotice({
  children,
  action,
}: {
  readonly children: React.ReactNode;
  readonly action?: React.ReactNode;
}) {
  return (
    <div role="status" className="stale-notice">
      <p>{children}</p>
      {action}
    </div>
  );
}
