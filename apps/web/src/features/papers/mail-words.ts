import { MAIL_STATES, type Mail, type MailState, type MailSummary } from '@scantling/contracts';
import { decimal } from '@scantling/decimals';
import { formatNumber } from '../../lib/format.ts';
import { localMoment } from '../../lib/local-moment.ts';

export const STATE_WORDS: Readonly<Record<MailState, string>> = {
  waiting: 'Waiting',
  sending: 'Being sent',
  sent: 'Sent',
  failed: 'Not sent',
  cancelled: 'Held back',
};

export function isMailState(text: string): text is MailState {
  return MAIL_STATES.some((state) => state === text);
}

/** The state of a mail with what is to be known beside it. */
export function stateWords(mail: MailSummary): string {
  if (mail.isDemo) return 'Demo, never sent';
  if (mail.state === 'waiting' && mail.attempts > 0) return 'Put off, tried again';
  return STATE_WORDS[mail.state];
}

export function mailboxWords({ name, address }: Mail['to']): string {
  return name === '' ? address : `${name} <${address}>`;
}

/** A size in bytes, in thousands as file lists show it. */
export function sizeWords(bytes: number): string {
  return bytes < 1_000_000
    ? `${formatNumber(decimal(bytes).div(1_000).toFixed(), bytes < 10_000 ? 1 : 0)} kB`
    : `${formatNumber(decimal(bytes).div(1_000_000).toFixed(), 1)} MB`;
}

export function momentWords(moment: string | null): string {
  return moment === null ? '–' : localMoment(moment);
}

/** Opens the mail in the reader's own mail program (RFC 6068); attachments are added there by hand. */
export function mailtoAddress({ to, subject, text }: Pick<Mail, 'to' | 'subject' | 'text'>): string {
  const body = encodeURIComponent(text.replaceAll('\n', '\r\n'));
  return `mailto:${encodeURIComponent(to.address)}?subject=${encodeURIComponent(subject)}&body=${body}`;
}
