import { type ApiToken, listApiTokens } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { apiTokensQuery } from '../api/list-api-tokens.ts';
import { NewTokenForm } from '../components/new-token-form.tsx';
import { RevokeAct } from '../components/revoke-act.tsx';

const COLUMNS: readonly DataColumn<ApiToken>[] = [
  { id: 'name', header: 'Name', text: ({ name }) => name },
  { id: 'role', header: 'Role', text: ({ role }) => role },
  { id: 'prefix', header: 'Starts with', text: ({ prefix }) => prefix },
  { id: 'createdBy', header: 'Made by', text: ({ createdBy }) => createdBy ?? '' },
  { id: 'createdAt', header: 'Made', text: ({ createdAt }) => createdAt.slice(0, 10) },
  {
    id: 'lastUsedAt',
    header: 'Last used',
    text: ({ lastUsedAt }) => (lastUsedAt === null ? 'never' : lastUsedAt.slice(0, 10)),
  },
  {
    id: 'acts',
    header: 'State',
    sortBy: false,
    text: ({ revokedAt }) => (revokedAt === null ? 'in use' : `revoked ${revokedAt.slice(0, 10)}`),
    render: (token) => <RevokeAct token={token} />,
  },
];

function Tokens() {
  const tokens = useQuery(apiTokensQuery);
  if (tokens.isPending) return <Loading />;
  if (tokens.isError) return <ErrorNotice error={tokens.error} retry={() => void tokens.refetch()} />;
  return (
    <DataTable
      label="API tokens"
      columns={COLUMNS}
      rows={tokens.data}
      rowId={({ id }) => id}
      empty="No program has a token yet; make one below."
    />
  );
}

/** The tokens by which programs use the API. */
export function ApiTokensScreen() {
  const isOwner = useMayCall(listApiTokens);
  return (
    <Sheet>
      <SheetHeader title="API tokens" path={<Link to="/users">Users</Link>} />
      {isOwner ? (
        <>
          <Section title="Tokens of programs">
            <Tokens />
          </Section>
          <Section title="Make a token">
            <NewTokenForm />
          </Section>
        </>
      ) : (
        <p>Owners make and revoke the tokens of programs. Ask one of them for a token.</p>
      )}
    </Sheet>
  );
}
