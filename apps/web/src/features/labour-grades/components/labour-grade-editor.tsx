import { Link, useNavigate } from '@tanstack/react-router';
import { RecordSheet } from '../../../components/record-editor/record-sheet.tsx';
import { useCurrency } from '../../../lib/use-session.ts';
import { labourGradeCalls } from '../api/labour-grade-calls.ts';
import { labourGradeGroups, labourGradeInput, labourGradeValues } from './labour-grade-fields.ts';

/** The sheet of a labour grade; `id` is null for a new one. */
export function LabourGradeEditor({ id }: { readonly id: string | null }) {
  const navigate = useNavigate();
  const currency = useCurrency();
  return (
    <RecordSheet
      calls={labourGradeCalls}
      id={id}
      path={<Link to="/labour-grades">Labour grades</Link>}
      newTitle="New labour grade"
      consequence="Operations that name its code can no longer be costed."
      facts={(grade) => [
        { label: 'Code', value: grade.code },
        { label: 'Currency', value: currency },
      ]}
      groups={labourGradeGroups(currency)}
      toValues={labourGradeValues}
      toInput={labourGradeInput}
      onCreated={() => void navigate({ to: '/labour-grades' })}
      onRemoved={() => void navigate({ to: '/labour-grades' })}
    />
  );
}
