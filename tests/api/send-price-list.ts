import type { TestApplication } from './application.ts';

/** Asks for an import until it is read. */
export async function untilRead(api: TestApplication, id: string) {
  for (let tries = 0; tries < 1200; tries += 1) {
    const { body } = await api.request.get(`/api/price-imports/${id}`).set(api.as('read-only')).expect(200);
    if (body.status !== 'reading') return body;
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
  throw new Error('the import was not read in time');
}

/** Sends a price list as a file and waits until it is read. */
export async function sendPriceList(
  api: TestApplication,
  content: string | Buffer,
  query: Record<string, string>,
) {
  const { body } = await api.request
    .post('/api/price-imports')
    .query(query)
    .set(api.as('bookkeeper'))
    .attach('file', Buffer.from(content), 'list.csv')
    .expect(202);
  return untilRead(api, body.id);
}

/** The rows of an import that are of one kind of change. */
export async function rowsOfChange(api: TestApplication, id: string, change: string) {
  const { body } = await api.request
    .get(`/api/price-imports/${id}/rows`)
    .query({ change })
    .set(api.as('read-only'))
    .expect(200);
  return body.items;
}
