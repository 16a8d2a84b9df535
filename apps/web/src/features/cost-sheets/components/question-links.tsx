import { Link } from '@tanstack/react-router';
import './question.css';

const QUESTIONS = [
  { to: '/cost-sheets/$sheetId/sensitivity', words: 'What moves it' },
  { to: '/cost-sheets/$sheetId/solve', words: 'What it takes' },
  { to: '/cost-sheets/$sheetId/risk', words: 'How sure it is' },
] as const;

/** The ways to ask a cost sheet something; the open one is struck with the chalk line. */
export function QuestionLinks({ sheetId }: { readonly sheetId: string }) {
  return (
    <nav className="question-links" aria-label="Questions to this cost sheet">
      {QUESTIONS.map(({ to, words }) => (
        <Link key={to} to={to} params={{ sheetId }} className="question-link">
          {words}
        </Link>
      ))}
    </nav>
  );
}
