import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import { ErrorNotice } from '../../../components/notices.tsx';
import { RecordSheet } from '../../../components/record-editor/record-sheet.tsx';
import { gradeChoicesQuery } from '../api/list-labour-grades.ts';
import { personCalls } from '../api/person-calls.ts';
import { personGroups, personInput, personValues } from './person-fields.ts';

/** The sheet of a person; `id` is null for a new one. */
export function PersonEditor({ id }: { readonly id: string | null }) {
  const navigate = useNavigate();
  const grades = useQuery(gradeChoicesQuery);
  return (
    <>
      {grades.isError && <ErrorNotice error={grades.error} retry={() => void grades.refetch()} />}
      <RecordSheet
        calls={personCalls}
        id={id}
        path={<Link to="/people">People</Link>}
        newTitle="New person"
        consequence="Their paid hours no longer count in what labour rates recover in a year."
        facts={(person) => [{ label: 'Labour grade', value: person.gradeName }]}
        groups={personGroups(grades.data ?? [])}
        toValues={personValues}
        toInput={personInput}
        onCreated={() => void navigate({ to: '/people' })}
        onRemoved={() => void navigate({ to: '/people' })}
      />
    </>
  );
}
