import type { IncomingHttpHeaders } from 'node:http';

/** The demo user's sign-in, which the README states. */
export const DEMO_EMAIL = 'demo@scantling.example';

const LOOPBACK_HOST = /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d{1,5})?$/i;
const LOOPBACK_ADDRESS = /^(?:::ffff:)?127(?:\.\d{1,3}){3}$|^::1$/;
const FORWARDED = ['forwarded', 'via', 'x-real-ip', 'x-original-host'];

/**
 * Whether the demo may be used by this request. Its password is public, so it works only for somebody who sits
 * at the machine: never with a public address set, never through a proxy, never under another name, and never
 * from another machine.
 */
export function isDemoSignInAllowed(
  request: { headers: IncomingHttpHeaders; socket: { remoteAddress?: string | undefined } },
  config: { publicUrl: string | undefined },
): boolean {
  if (config.publicUrl !== undefined) return false;
  const names = Object.keys(request.headers);
  if (names.some((name) => FORWARDED.includes(name) || name.startsWith('x-forwarded-'))) return false;
  if (!LOOPBACK_HOST.test(request.headers.host ?? '')) return false;
  return LOOPBACK_ADDRESS.test(request.socket.remoteAddress ?? '');
}
