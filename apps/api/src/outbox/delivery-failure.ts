/** Why a mail was not sent, in words for its screen, and whether trying again is of no use. */
export type DeliveryFailure = { words: string; isFinal: boolean };

const LONGEST_REPLY = 300;

function fieldOf(error: Error, name: 'code' | 'command' | 'response'): string {
  const value: unknown = Reflect.get(error, name);
  return typeof value === 'string' ? value : '';
}

/** What a server or the network said, fit to be shown. */
export function printable(text: string): string {
  return text
    .replace(/[\p{C}\p{Zl}\p{Zp}]+/gu, ' ')
    .trim()
    .slice(0, LONGEST_REPLY);
}

/** What the server said with a reply code; RFC 5321, 4.2.1: 4xx may work later, 5xx will not. */
function refusal(error: Error, replyCode: number, to: string): DeliveryFailure {
  const said = printable(fieldOf(error, 'response') || error.message);
  const command = fieldOf(error, 'command');
  if (replyCode < 500) return { words: `The mail server put it off: ${said}`, isFinal: false };
  if (command.startsWith('RCPT'))
    return { words: `The mail server refused the address ${to}: ${said}`, isFinal: true };
  if (command.startsWith('MAIL'))
    return { words: `The mail server refused the sender that MAIL_FROM names: ${said}`, isFinal: true };
  if (command.startsWith('DATA'))
    return { words: `The mail server refused the mail: ${said}`, isFinal: true };
  // A server that turns the connection itself away says nothing about this mail.
  return { words: `The mail server refuses to talk: ${said}`, isFinal: false };
}

/** Reads what the SMTP library threw. */
export function deliveryFailure(error: unknown, to: string): DeliveryFailure {
  if (!(error instanceof Error)) return { words: printable(String(error)), isFinal: false };
  const code = fieldOf(error, 'code');
  const why = printable(fieldOf(error, 'response') || error.message);
  if (code === 'EAUTH')
    return {
      words: `The mail server refused the sign-in; correct user and password in SMTP_URL: ${why}`,
      isFinal: false,
    };
  if (code === 'ETLS')
    return { words: `No secure connection to the mail server could be made: ${why}`, isFinal: false };
  const replyCode: unknown = Reflect.get(error, 'responseCode');
  if (typeof replyCode === 'number') return refusal(error, replyCode, to);
  if (code === 'EDNS')
    return { words: `The mail server's name is not known; correct SMTP_URL: ${why}`, isFinal: false };
  const isUnmet = Reflect.get(error, 'syscall') === 'connect' || /^(?:Connection timeout|Greeting)/.test(why);
  if (isUnmet) return { words: `The mail server cannot be reached: ${why}`, isFinal: false };
  return {
    words: `The connection broke off before the mail server had confirmed. It may have arrived; it is sent again under the same Message-ID: ${why}`,
    isFinal: false,
  };
}
