import type { AddressInfo } from 'node:net';
import { text } from 'node:stream/consumers';
import { SMTPServer } from 'smtp-server';

export type ReceivedMail = { from: string; to: string[]; raw: string };

/** How the server answers one mail: takes it, refuses it with a code, or hangs up before or after having read it. */
export type Answer =
  | { kind: 'take' }
  | { kind: 'refuse'; at: 'sender' | 'address' | 'mail'; code: number; words: string }
  | { kind: 'hang-up'; when: 'early' | 'late' }
  | { kind: 'silence' };

export type MailServer = {
  url: string;
  /** What it has taken and confirmed, in order. */
  received: ReceivedMail[];
  /** Subjects of what was handed to it, whether it confirmed or not. */
  seen: string[];
  /** How it answers from now on. */
  answer: (next: Answer) => void;
  close: () => Promise<void>;
};

class Refusal extends Error {
  readonly responseCode: number;
  constructor(code: number, words: string) {
    super(words);
    this.responseCode = code;
  }
}

/** One header of a message, unfolded. */
export function headerOf(raw: string, name: string): string | undefined {
  const head = raw.split('\r\n\r\n')[0]?.replace(/\r\n[ \t]+/g, ' ') ?? '';
  const line = head.split('\r\n').find((one) => one.toLowerCase().startsWith(`${name.toLowerCase()}:`));
  return line?.slice(name.length + 1).trim();
}

/** A real SMTP server on this machine, for tests. */
export async function startMailServer(
  options: { user?: string; password?: string } = {},
): Promise<MailServer> {
  let now: Answer = { kind: 'take' };
  const received: ReceivedMail[] = [];
  const seen: string[] = [];
  const refuses = (at: string) =>
    now.kind === 'refuse' && now.at === at ? new Refusal(now.code, now.words) : null;
  const server = new SMTPServer({
    disabledCommands: options.user === undefined ? ['STARTTLS', 'AUTH'] : ['STARTTLS'],
    allowInsecureAuth: true,
    logger: false,
    closeTimeout: 100,
    onAuth: ({ username, password }, _, done) =>
      username === options.user && password === options.password
        ? done(null, { user: username })
        : done(new Refusal(535, 'Who are you?')),
    onMailFrom: (_, __, done) => done(refuses('sender')),
    onRcptTo: (_, __, done) => done(refuses('address')),
    onData: (stream, session, done) => {
      const hangUp = () => {
        for (const connection of server.connections) connection._socket.destroy();
      };
      if (now.kind === 'hang-up' && now.when === 'early') stream.once('data', hangUp);
      void text(stream).then((raw) => {
        seen.push(headerOf(raw, 'subject') ?? '');
        if (now.kind === 'silence') return;
        if (now.kind === 'hang-up') return hangUp();
        const refusal = refuses('mail');
        if (refusal !== null) return done(refusal);
        const { mailFrom, rcptTo } = session.envelope;
        const from = mailFrom === false ? '' : mailFrom.address;
        received.push({ from, to: rcptTo.map(({ address }) => address), raw });
        done(null, 'taken');
      });
    },
  });
  server.on('error', () => undefined);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.server.address() as AddressInfo;
  const signIn = options.user === undefined ? '' : `${options.user}:${options.password}@`;
  return {
    url: `smtp://${signIn}127.0.0.1:${port}`,
    received,
    seen,
    answer: (next) => {
      now = next;
    },
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
