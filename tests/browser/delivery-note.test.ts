import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { acceptedQuote } from './accepted-quote.ts';
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

it('two of three chests are handed over with a delivery note, which is read, mailed and followed by the last', async () => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, application.address);
  const quoteId = await acceptedQuote(page, { title: 'Three chests', quantity: '3', price: '500' });

  await page.goto(`${application.address}/quotes/${quoteId}`);
  await page.getByRole('link', { name: 'Delivery notes', exact: true }).click();
  const along = page.getByRole('textbox', { name: 'On this note: Chest' });
  await along.waitFor();
  expect(await along.inputValue()).toBe('3');
  expect(await violations(page)).toEqual([]);
  await along.fill('4');
  await page.getByRole('button', { name: 'Write the delivery note' }).click();
  await page.getByText(/4, and 3 of 3 are still to be handed over/).waitFor();
  await along.fill('2');
  await page.getByRole('textbox', { name: 'Note', exact: true }).fill('The third follows on Friday.');
  await page.getByRole('button', { name: 'Write the delivery note' }).click();

  await page.getByRole('heading', { name: /^Delivery note DN-/, level: 1 }).waitFor();
  await page.getByText('The third follows on Friday.').waitFor();
  await page.getByRole('cell', { name: '1 piece', exact: true }).waitFor();
  const paper = page.getByRole('link', { name: 'The paper to sign (PDF)' });
  const bytes = await page.request.get(`${application.address}${await paper.getAttribute('href')}`);
  expect(bytes.headers()['content-type']).toContain('application/pdf');
  await page.getByRole('button', { name: 'Mail it', exact: true }).click();
  await page.getByRole('textbox', { name: /^E-mail address/ }).fill('greta@client.example');
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Mail it', exact: true }).click();
  await page.getByRole('link', { name: /^Delivery note DN-.*Three chests$/ }).click();
  await page.getByRole('heading', { name: /^Delivery note DN-/, level: 1 }).waitFor();
  await page.getByRole('heading', { name: 'Text', exact: true }).waitFor();
  expect(await violations(page)).toEqual([]);

  await page.goto(`${application.address}/quotes/${quoteId}/delivery-notes`);
  await along.waitFor();
  expect(await along.inputValue()).toBe('1');
  await page.getByRole('button', { name: 'Write the delivery note' }).click();
  await page.getByRole('heading', { name: /^Delivery note DN-/, level: 1 }).waitFor();
  await page.getByRole('link', { name: 'Delivery notes of the quote' }).click();
  await page.getByText('Everything is handed over.').waitFor();
  expect(await page.getByRole('grid', { name: 'Delivery notes written' }).getByRole('row').count()).toBe(3);
  expect(errors).toEqual([]);
});

it('the demo’s invoice, credit note, statement and delivery note are without a violation of WCAG and fit a phone', async () => {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await signInAsDemo(page, application.address);
  const read = async (path: string) => (await page.request.get(`${application.address}/api/${path}`)).json();
  const { items } = await read('invoices?limit=200');
  const demo = items.filter((one: { isDemo: boolean }) => one.isDemo);
  const [first] = demo;
  const { notes } = await read(`quotes/${first.quoteId}/delivery-notes`);
  const screens = [
    ...demo.map(({ id }: { id: string }) => `/invoices/${id}`),
    `/clients/${first.clientId}/statement`,
    `/quotes/${first.quoteId}/money`,
    `/quotes/${first.quoteId}/delivery-notes`,
    `/delivery-notes/${notes[0].id}`,
  ];
  const wrong: Record<string, unknown> = {};
  for (const screen of screens) {
    await page.goto(`${application.address}${screen}`);
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    await page.waitForLoadState('networkidle');
    const found = await violations(page);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    if (found.length > 0 || width > 390) wrong[screen] = { found, width };
  }
  expect(wrong).toEqual({});
  expect(screens.length).toBeGreaterThanOrEqual(7);
});
