import type { Page } from 'playwright-core';

/** A quote of pieces and 19 % tax with 40 % on acceptance, sent and accepted by hand. @returns its id */
export function acceptedQuote(
  page: Page,
  given: { readonly title: string; readonly quantity: string; readonly price: string },
): Promise<string> {
  return page.evaluate(async ({ title, quantity, price }) => {
    const call = async (method: string, path: string, body?: unknown, etag?: string | null) => {
      const headers = new Headers({ accept: 'application/json' });
      if (method === 'POST') headers.set('idempotency-key', crypto.randomUUID());
      if (body !== undefined) headers.set('content-type', 'application/json');
      if (etag) headers.set('if-match', etag);
      const answer = await fetch(path, {
        method,
        headers,
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      if (!answer.ok) throw new Error(`${method} ${path}: ${await answer.text()}`);
      return { value: await answer.json(), etag: answer.headers.get('etag') };
    };
    const clients = await call('GET', '/api/clients');
    const begun = await call('POST', '/api/quotes', {
      title,
      clientId: clients.value.items[0].id,
      enquiryId: null,
      draft: {
        intro: '',
        currency: 'USD',
        priceMode: 'exclusive',
        taxes: [{ id: 'full', name: 'VAT 19 %', category: 'S', rate: '0.19', exemptionReason: '' }],
        lines: [
          {
            kind: 'free',
            id: 'chest',
            description: 'Chest',
            details: '',
            tax: 'full',
            choice: { kind: 'included' },
            pictures: [],
            quantity,
            unit: 'piece',
            price,
            cost: '400',
          },
        ],
        discount: null,
        schedule: [
          { id: 'deposit', label: 'On acceptance', share: '0.4', due: 'on-acceptance' },
          { id: 'rest', label: 'On delivery', share: '0.6', due: 'on-delivery' },
        ],
        promisedOn: null,
        validDays: 30,
        terms: '',
        pictures: [],
      },
    });
    const path = `/api/quote-revisions/${begun.value.currentRevisionId}`;
    const draft = await call('GET', path);
    await call('POST', `${path}/send`, undefined, draft.etag);
    const sent = await call('GET', path);
    await call('POST', `${path}/accept`, { name: 'Ottoline Marsh', how: 'by phone' }, sent.etag);
    return String(begun.value.id);
  }, given);
}
