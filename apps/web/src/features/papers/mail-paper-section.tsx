import { mailPaper } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../components/button.tsx';
import { ErrorNotice } from '../../components/notices.tsx';
import { Loading } from '../../components/progress.tsx';
import { EntryForm } from '../../components/record-editor/entry-form.tsx';
import { type GroupSpec, textOf } from '../../components/record-editor/field-spec.ts';
import { Section } from '../../components/sheet.tsx';
import { useMayCall } from '../../lib/use-session.ts';
import { useMailPaper } from './api/mail-paper.ts';
import { type PaperMail, paperMailQuery } from './api/propose-paper-mail.ts';
import { momentWords, stateWords } from './mail-words.ts';
import './papers.css';

const FIELDS: readonly GroupSpec[] = [
  {
    fields: [
      { kind: 'text', name: 'to.name', label: 'Name' },
      { kind: 'email', name: 'to.address', label: 'E-mail address', isRequired: true, isWide: true },
      { kind: 'text', name: 'subject', label: 'Subject', isRequired: true, isWide: true },
      { kind: 'lines', name: 'text', label: 'Text', isRequired: true, isWide: true },
    ],
  },
];

function WriteMail({ documentId, proposed }: { readonly documentId: string; readonly proposed: PaperMail }) {
  const [values, setValues] = useState(() => ({
    'to.name': proposed.to.name,
    'to.address': proposed.to.address ?? '',
    subject: proposed.subject,
    text: proposed.text,
  }));
  const send = useMailPaper(documentId);
  return (
    <EntryForm
      groups={FIELDS}
      values={values}
      onChange={(next) => setValues({ ...values, ...next })}
      onEnter={() =>
        send.mutate({
          to: { name: textOf(values, 'to.name'), address: textOf(values, 'to.address') },
          subject: textOf(values, 'subject'),
          text: textOf(values, 'text'),
        })
      }
      entry={send}
      act="Mail it"
      pendingText="Mailing ..."
      said={send.isSuccess ? 'It is among the mails, with the paper attached.' : ''}
    />
  );
}

function Mails({ mails }: Pick<PaperMail, 'mails'>) {
  return (
    <ul className="paper-mails">
      {mails.map((mail) => (
        <li key={mail.id}>
          <Link to="/mail/$mailId" params={{ mailId: mail.id }}>
            {mail.subject}
          </Link>{' '}
          to {mail.to.address}: {stateWords(mail)}, written {momentWords(mail.createdAt)}
        </li>
      ))}
    </ul>
  );
}

interface MailPaperSectionProps {
  /** The stored paper. */
  readonly documentId: string;
  readonly title?: string;
  /** Whether the mail is written at once, where somebody asked for it already. */
  readonly isWriting?: boolean;
  /** Puts it away again, where it was opened. */
  readonly onDone?: () => void;
}

/** The mails a stored paper went out with, and the next one: it goes as it was issued, as often as wanted. */
export function MailPaperSection(props: MailPaperSectionProps) {
  const { documentId, title = 'Mail', isWriting = false, onDone } = props;
  const [isOpen, setIsOpen] = useState(isWriting);
  const mayMail = useMayCall(mailPaper);
  const read = useQuery({ ...paperMailQuery(documentId), enabled: mayMail });
  if (!mayMail) return null;
  return (
    <Section title={title} note="the paper goes along as it was issued">
      {read.isPending && <Loading />}
      {read.isError && <ErrorNotice error={read.error} retry={() => void read.refetch()} />}
      {read.data && read.data.mails.length > 0 && <Mails mails={read.data.mails} />}
      {read.data && !isOpen && (
        <div>
          <Button onPress={() => setIsOpen(true)}>
            {read.data.mails.length === 0 ? 'Mail it' : 'Mail it again'}
          </Button>
        </div>
      )}
      {read.data && isOpen && <WriteMail documentId={documentId} proposed={read.data} />}
      {onDone !== undefined && (
        <div>
          <Button look="quiet" onPress={onDone}>
            Close
          </Button>
        </div>
      )}
    </Section>
  );
}
