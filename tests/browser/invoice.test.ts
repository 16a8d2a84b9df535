import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { type RunningApplication, startApplication } from './application.ts';
import { launchBrowser } from './browser.ts';
import { signInAsDemo } from './sign-in-demo.ts';
import { violations } from './violations.ts';

let application: RunningApplication;
let browser: Browser;

beforeAll(async () => {
  application = await startApplication({ SCANTLING_DEMO: 'on' });
});
// A browser for each test: the one from npm is a single process, which ends with its first page.
beforeEach(async () => {
  browser = await launchBrowser();
});
afterEach(async () => {
  await browser?.close();
});
afterAll(async () => {
  await application?.stop();
});

/** A quote of 1,000 and 19 % tax with 40 % on acceptance, sent and accepted by hand. @returns its id */
function acceptedQuote(page: Page): Promise<string> {
  return page.evaluate(async () => {
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
      title: 'A chest, billed in two',
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
            quantity: '1',
            unit: 'piece',
            price: '1000',
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
  });
}

/** The sum under a label, as it is written. */
function sum(page: Page, label: string) {
  return page.locator('.money-sums > div').filter({ hasText: label }).getByRole('button');
}

it('an accepted quote is billed by a deposit and a final invoice less it, and owes nothing once both are paid', async () => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, application.address);
  const quoteId = await acceptedQuote(page);

  await page.goto(`${application.address}/quotes/${quoteId}`);
  await page.getByRole('link', { name: 'Money', exact: true }).click();
  await page.getByRole('button', { name: 'Prepare the invoice: On acceptance' }).click();
  await page.getByRole('button', { name: 'Issue the deposit invoice' }).click();

  // 1,000 + 19 % = 1,190; 40 % of it = 476, worked out by hand.
  await page.getByRole('heading', { name: /^Deposit invoice INV-/, level: 1 }).waitFor();
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$476.00');
  await page.getByRole('textbox', { name: 'Amount', exact: true }).fill('500000000000000');
  await page.getByRole('button', { name: 'Enter the payment' }).click();
  await page.getByRole('alert').waitFor();
  await page.getByRole('textbox', { name: 'Amount', exact: true }).fill('476');
  await page.getByRole('button', { name: 'Enter the payment' }).click();
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$0.00');
  await page.getByRole('region', { name: 'Payments entered' }).getByRole('link').waitFor();
  expect(await violations(page)).toEqual([]);

  await page.getByRole('link', { name: 'All money of the quote' }).click();
  await page.getByRole('button', { name: 'Look at it' }).click();
  await expect.poll(() => sum(page, 'This invoice').textContent()).toBe('$714.00');
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Issue the final invoice' }).click();
  await page.getByRole('heading', { name: /^Final invoice INV-/, level: 1 }).waitFor();
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$714.00');
  await page.getByText(/^Less deposit invoice INV-/).waitFor();
  await page.getByRole('button', { name: 'Enter the payment' }).click();
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$0.00');

  await page.getByRole('link', { name: 'All money of the quote' }).click();
  await expect.poll(() => sum(page, 'Left to invoice').textContent()).toBe('$0.00');
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$0.00');
  expect(errors).toEqual([]);
});
