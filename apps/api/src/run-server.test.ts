import { expect, it } from 'vitest';
import { addressOf } from './run-server.ts';

// Bracketed IPv6 hosts: RFC 3986, section 3.2.2. 0.0.0.0 and :: mean every address and are none themselves.
it.each([
  ['127.0.0.1', 'http://127.0.0.1:4600'],
  ['workshop.example', 'http://workshop.example:4600'],
  ['0.0.0.0', 'http://127.0.0.1:4600'],
  ['::', 'http://[::1]:4600'],
  ['::1', 'http://[::1]:4600'],
])('a server listening on %s is opened at %s', (host, address) => {
  expect(addressOf(host, 4600)).toBe(address);
});
