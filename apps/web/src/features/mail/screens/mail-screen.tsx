import { cancelMail, type Mail, resendMail } from '@scantling/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice, StaleNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Section, Sheet, SheetHeader } from '../../../components/sheet.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { mailboxWords, mailtoAddress, momentWords, sizeWords, stateWords } from '../../papers/mail-words.ts';
import { PaperLink } from '../../papers/paper-link.tsx';
import { useCancelMail } from '../api/cancel-mail.ts';
import { mailQuery } from '../api/get-mail.ts';
import { MailServiceNote } from '../components/mail-service-note.tsx';
import { SendAgain } from '../components/send-again.tsx';
import '../components/mail.css';

function Attachments({ mail }: { readonly mail: Mail }) {
  if (mail.attachments.length === 0) return <p className="field-hint">None</p>;
  return (
    <ul className="mail-attachments">
      {mail.attachments.map(({ documentId, fileName, size }) => (
        <li key={documentId}>
          <PaperLink id={documentId}>{fileName}</PaperLink> <span>{sizeWords(size)}</span>
        </li>
      ))}
    </ul>
  );
}

function Way({ mail }: { readonly mail: Mail }) {
  const steps: readonly (readonly [string, React.ReactNode])[] = [
    ['To', mailboxWords(mail.to)],
    ['From', mail.sentFrom ?? 'as MAIL_FROM says when it is sent'],
    ['Answers go to', mail.replyTo ?? 'the address it comes from'],
    ['Attempts', String(mail.attempts)],
    ...(mail.nextAttemptAt === null || mail.isDemo
      ? []
      : [['Next attempt', momentWords(mail.nextAttemptAt)] as const]),
    ...(mail.serverReply === null ? [] : [['The mail server said', mail.serverReply] as const]),
    ...(mail.copyOf === null
      ? []
      : [
          [
            'Copy of',
            <Link key="copy" to="/mail/$mailId" params={{ mailId: mail.copyOf }}>
              an earlier mail
            </Link>,
          ] as const,
        ]),
    ['Message-ID', mail.messageId],
  ];
  return (
    <dl className="mail-way">
      {steps.map(([label, value]) => [<dt key={label}>{label}</dt>, <dd key={`${label} value`}>{value}</dd>])}
    </dl>
  );
}

function HoldBack({ mail }: { readonly mail: Mail }) {
  const cancel = useCancelMail(mail.id);
  return (
    <>
      <Button isPending={cancel.isPending} pendingText="Holding back ..." onPress={() => cancel.mutate()}>
        Hold it back
      </Button>
      {cancel.isError && <ErrorNotice error={cancel.error} />}
    </>
  );
}

/** One mail: what it says, what became of it, and what can still be done. */
export function MailScreen() {
  const { mailId } = useParams({ from: '/shell/mail/$mailId' });
  const read = useQuery(mailQuery(mailId));
  const mail = read.data;
  const mayResend = useMayCall(resendMail);
  const mayCancel = useMayCall(cancelMail);
  const isOpen = mail !== undefined && (mail.state === 'waiting' || mail.state === 'failed');
  return (
    <Sheet>
      <SheetHeader
        title={mail?.subject ?? 'Mail'}
        path={<Link to="/mail">Mail</Link>}
        facts={
          mail
            ? [
                { label: 'State', value: stateWords(mail) },
                { label: 'To', value: mail.to.name || mail.to.address },
                { label: 'Written', value: momentWords(mail.createdAt) },
                { label: 'Sent', value: momentWords(mail.sentAt) },
              ]
            : []
        }
        actions={
          mail && (
            <>
              {isOpen && mayCancel && !mail.isDemo && <HoldBack mail={mail} />}
              <a className="button button-plain" href={mailtoAddress(mail)}>
                Open in your own mail program
              </a>
            </>
          )
        }
      />
      {read.isPending && <Loading />}
      {read.isError && <ErrorNotice error={read.error} retry={() => void read.refetch()} />}
      {mail && (
        <>
          {isOpen && !mail.isDemo && <MailServiceNote />}
          {mail.lastError !== null && <StaleNotice>{mail.lastError}</StaleNotice>}
          <Section title="Text">
            <pre className="mail-text">{mail.text}</pre>
          </Section>
          <Section title="Attachments" note="As they were sent; they never change.">
            <Attachments mail={mail} />
          </Section>
          <Section title="On its way">
            <Way mail={mail} />
          </Section>
          {mayResend && !mail.isDemo && mail.state !== 'sending' && <SendAgain key={mail.id} mail={mail} />}
        </>
      )}
    </Sheet>
  );
}
