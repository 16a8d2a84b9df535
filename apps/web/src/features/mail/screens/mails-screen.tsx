import { MAIL_STATES, type MailSummary } from '@scantling/contracts';
import { useInfiniteQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { Button } from '../../../components/button.tsx';
import type { DataColumn } from '../../../components/data-table/data-column.ts';
import { DataTable } from '../../../components/data-table/data-table.tsx';
import { EmptyState, ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { mailsQuery } from '../api/list-mails.ts';
import { MailServiceNote } from '../components/mail-service-note.tsx';
import '../../../components/record-editor/record-editor.css';
import { isMailState, momentWords, STATE_WORDS, stateWords } from '../../papers/mail-words.ts';

const COLUMNS: readonly DataColumn<MailSummary>[] = [
  {
    id: 'subject',
    header: 'Subject',
    width: 320,
    text: ({ subject }) => subject,
    render: (mail) => (
      <Link to="/mail/$mailId" params={{ mailId: mail.id }}>
        {mail.subject}
      </Link>
    ),
  },
  { id: 'to', header: 'To', width: 240, text: ({ to }) => to.name || to.address },
  { id: 'state', header: 'State', width: 160, text: stateWords },
  { id: 'written', header: 'Written', width: 150, text: ({ createdAt }) => momentWords(createdAt) },
  { id: 'sent', header: 'Sent', width: 150, text: ({ sentAt }) => momentWords(sentAt) },
  { id: 'error', header: 'What went wrong', width: 420, text: ({ lastError }) => lastError ?? '' },
];
const ALL = 'all';

/** What the program has written to people, and what became of it. */
export function MailsScreen() {
  const { state } = useSearch({ from: '/shell/mail' });
  const navigate = useNavigate();
  const mails = useInfiniteQuery(mailsQuery(state));
  const rows = mails.data?.pages.flatMap(({ items }) => items) ?? [];
  return (
    <Sheet>
      <SheetHeader title="Mail" />
      <MailServiceNote />
      <div className="list-acts">
        <Select
          label="State"
          choices={[{ id: ALL, label: 'All' }, ...MAIL_STATES.map((id) => ({ id, label: STATE_WORDS[id] }))]}
          value={state ?? ALL}
          onChange={(id) => void navigate({ to: '/mail', search: isMailState(id) ? { state: id } : {} })}
        />
      </div>
      {mails.isPending && <Loading />}
      {mails.isError && <ErrorNotice error={mails.error} retry={() => void mails.refetch()} />}
      {mails.isSuccess && rows.length === 0 && (
        <EmptyState title={state === undefined ? 'No mail has been written yet' : 'No mail is in this state'}>
          Sending a quote or an invoice writes one. Every mail stays here with its text and attachments.
        </EmptyState>
      )}
      {rows.length > 0 && (
        <DataTable
          label="Mail"
          columns={COLUMNS}
          rows={rows}
          rowId={(row) => row.id}
          onOpenRow={(row) => void navigate({ to: '/mail/$mailId', params: { mailId: row.id } })}
        />
      )}
      {mails.hasNextPage && (
        <Button
          isPending={mails.isFetchingNextPage}
          pendingText="Reading ..."
          onPress={() => void mails.fetchNextPage()}
        >
          Show older ones
        </Button>
      )}
    </Sheet>
  );
}
