import type { PaperContact, PaperFooterColumn, PaperLetterhead } from './paper.ts';

/** Who sends the paper, as the workshop's record says; an empty text is left out. */
export interface PaperSender {
  readonly name: string;
  readonly addressLines: readonly string[];
  readonly email: string;
  readonly phone: string;
  /** With or without "https://". */
  readonly web: string;
  readonly taxNumber: string;
  readonly registration: string;
  readonly bankLines: readonly string[];
  readonly footer: string;
  readonly logo: { readonly sha256: string; readonly alternative: string } | null;
}

function isGiven(text: string): boolean {
  return text.trim() !== '';
}

/** A telephone number as RFC 3966 wants it: digits, and a plus in front where there is one. */
function telephoneLink(phone: string): string | null {
  const digits = phone.replace(/\(0\)/g, '').replace(/\D/g, '');
  return digits === '' ? null : `tel:${phone.trim().startsWith('+') ? '+' : ''}${digits}`;
}

function contacts({ phone, email, web }: PaperSender): PaperContact[] {
  const site = web.trim();
  const all: PaperContact[] = [
    { label: 'Telephone', text: phone.trim(), link: telephoneLink(phone) },
    { label: 'E-mail', text: email.trim(), link: `mailto:${email.trim()}` },
    {
      label: 'Web',
      text: site.replace(/^https?:\/\//, '').replace(/\/$/, ''),
      link: /^https?:\/\//.test(site) ? site : `https://${site}`,
    },
  ];
  return all.filter(({ text }) => text !== '');
}

function columns({
  name,
  addressLines,
  taxNumber,
  registration,
  bankLines,
}: PaperSender): PaperFooterColumn[] {
  const registered = [isGiven(taxNumber) ? `Tax number ${taxNumber}` : '', registration];
  const all = [
    { heading: 'Workshop', lines: [name, ...addressLines] },
    { heading: 'Registration', lines: registered },
    { heading: 'Bank', lines: [...bankLines] },
  ];
  return all
    .map(({ heading, lines }) => ({ heading, lines: lines.filter(isGiven) }))
    .filter(({ lines }) => lines.length > 0);
}

/** The head and foot that all papers of a workshop share. */
export function paperLetterhead(sender: PaperSender): PaperLetterhead {
  return {
    name: sender.name,
    address: sender.addressLines.filter(isGiven),
    contact: contacts(sender),
    footer: columns(sender),
    footerNote: isGiven(sender.footer) ? sender.footer : null,
    logo: sender.logo === null ? null : { ...sender.logo, caption: null },
  };
}
