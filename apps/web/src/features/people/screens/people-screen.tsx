import type { PersonRecord } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { Link, useNavigate } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { RecordList } from '../../../components/record-editor/record-list.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { formatNumber } from '../../../lib/format.ts';
import { personCalls } from '../api/person-calls.ts';

const COLUMNS: readonly DataColumn<PersonRecord>[] = [
  {
    id: 'name',
    header: 'Person',
    text: ({ name }) => name,
    render: (person) => (
      <Link to="/people/$personId" params={{ personId: person.id }}>
        {person.name}
      </Link>
    ),
  },
  {
    id: 'grade',
    header: 'Labour grade',
    text: ({ gradeName }) => gradeName,
    render: (person) => (
      <Link to="/labour-grades/$gradeId" params={{ gradeId: person.gradeId }}>
        {person.gradeName}
      </Link>
    ),
  },
  {
    id: 'paidHours',
    header: 'Paid hours a year',
    isNumeric: true,
    text: ({ paidHoursPerYear }) => paidHoursPerYear,
    sortBy: ({ paidHoursPerYear }) => decimal(paidHoursPerYear),
    render: ({ paidHoursPerYear }) => `${formatNumber(paidHoursPerYear, 2)} h`,
  },
  { id: 'demo', header: 'Demo', text: ({ isDemo }) => (isDemo ? 'invented' : '') },
];

/** Who works in the shop. */
export function PeopleScreen() {
  const navigate = useNavigate();
  return (
    <Sheet>
      <SheetHeader title="People" />
      <RecordList
        calls={personCalls}
        label="People"
        columns={COLUMNS}
        newLink={<Link to="/people/new">Enter a person</Link>}
        emptyTitle="Here stands who works in the shop"
        emptyText="Their paid hours tell what labour rates recover in a year. Enter labour grades first."
        onOpen={(person) => void navigate({ to: '/people/$personId', params: { personId: person.id } })}
      />
    </Sheet>
  );
}
