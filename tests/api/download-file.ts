import type { Role } from '@scantling/contracts';
import type { Response } from 'supertest';
import type { TestApplication } from './application.ts';

/** What an address answers, its body as bytes. */
export async function downloadFile(
  test: TestApplication,
  address: string,
  role: Role,
): Promise<Response & { body: Buffer }> {
  return test.request
    .get(address)
    .set(test.as(role))
    .buffer(true)
    .parse((response, done) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () => done(null, Buffer.concat(parts)));
    });
}
