import { Link, useNavigate } from '@tanstack/react-router';
import { RecordSheet } from '../../../components/record-editor/record-sheet.tsx';
import { useCurrency } from '../../../lib/use-session.ts';
import { overheadAmountCalls } from '../api/overhead-amount-calls.ts';
import { overheadAmountGroups, overheadAmountInput, overheadAmountValues } from './overhead-amount-fields.ts';
import { HOME_WORDS } from './overhead-words.ts';

/** The sheet of a yearly amount; `id` is null for a new one. */
export function OverheadAmountEditor({ id }: { readonly id: string | null }) {
  const navigate = useNavigate();
  const currency = useCurrency();
  return (
    <RecordSheet
      calls={overheadAmountCalls}
      id={id}
      path={<Link to="/overhead">Overhead</Link>}
      newTitle="New yearly amount"
      consequence="It is no longer recovered from the next cost sheet on."
      facts={(amount) => [
        { label: 'Home', value: HOME_WORDS[amount.home] },
        { label: 'Currency', value: currency },
      ]}
      groups={(values) => overheadAmountGroups(currency, values)}
      toValues={overheadAmountValues}
      toInput={overheadAmountInput}
      onCreated={() => void navigate({ to: '/overhead' })}
      onRemoved={() => void navigate({ to: '/overhead' })}
    />
  );
}
