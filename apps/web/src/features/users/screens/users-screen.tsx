import { listUsers, ROLE_MEANINGS, ROLES, type User } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { usersQuery } from '../api/list-users.ts';
import { NewUserForm } from '../components/new-user-form.tsx';
import { RemoveUser, RoleChoice } from '../components/user-acts.tsx';
import '../components/users.css';

const COLUMNS: readonly DataColumn<User>[] = [
  { id: 'name', header: 'Name', text: ({ name }) => name },
  { id: 'email', header: 'E-mail address', text: ({ email }) => email },
  { id: 'role', header: 'Role', text: ({ role }) => role, render: (user) => <RoleChoice user={user} /> },
  { id: 'createdAt', header: 'Since', text: ({ createdAt }) => createdAt.slice(0, 10) },
  { id: 'demo', header: 'Demo', text: ({ isDemo }) => (isDemo ? 'invented' : '') },
  {
    id: 'acts',
    header: 'Access',
    sortBy: false,
    text: () => '',
    render: (user) => <RemoveUser user={user} />,
  },
];

function Users() {
  const users = useQuery(usersQuery);
  if (users.isPending) return <Loading />;
  if (users.isError) return <ErrorNotice error={users.error} retry={() => void users.refetch()} />;
  return <DataTable label="Users" columns={COLUMNS} rows={users.data} rowId={({ id }) => id} />;
}

/** Who can sign in, and as what. */
export function UsersScreen() {
  const isOwner = useMayCall(listUsers);
  return (
    <Sheet>
      <SheetHeader
        title="Users"
        {...(isOwner ? { path: <Link to="/api-tokens">Tokens of programs</Link> } : {})}
      />
      {isOwner ? (
        <>
          <Section title="Who can sign in">
            <Users />
          </Section>
          <Section title="Let a person sign in">
            <NewUserForm />
          </Section>
        </>
      ) : (
        <p>Owners say who can sign in and as what. Ask one of them to change your role.</p>
      )}
      <Section title="What each role may do">
        <dl className="role-list">
          {ROLES.map((role) => (
            <div key={role}>
              <dt>{role}</dt>
              <dd>{ROLE_MEANINGS[role]}</dd>
            </div>
          ))}
        </dl>
      </Section>
    </Sheet>
  );
}
