import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { type RunningApplication, startApplication } from './application.ts';
import { launchBrowser } from './browser.ts';
import { signInAsDemo } from './sign-in-demo.ts';
import { violations } from './violations.ts';

let application: RunningApplication;
let browser: Browser;
let page: Page;
let errors: string[] = [];

beforeAll(async () => {
  application = await startApplication({ SCANTLING_DEMO: 'on' });
});
// A browser for each test: the one from npm is a single process, which ends with its first page.
beforeEach(async () => {
  browser = await launchBrowser();
  page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  errors = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, application.address);
});
afterEach(async () => {
  await browser?.close();
});
afterAll(async () => {
  await application?.stop();
});

const rowOf = (title: string) => page.getByRole('row').filter({ hasText: title });

it('imports a list, sees what it moves, and holds the price of a sent quote with a reason', async () => {
  await page.goto(`${application.address}/price-lists/import`);
  await page.getByRole('combobox', { name: 'Supplier' }).fill('Hollow');
  await page.getByRole('option', { name: /Hollow Kettle/ }).click();
  const rows = [
    'Item,Your ref,Per,Price',
    'HK-CHER-44F,cherry-4-4,BF,11.95',
    'HK-BEEC-44F,beech-4-4,BF,7.10',
  ];
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'winter.csv', mimeType: 'text/csv', buffer: Buffer.from(rows.join('\r\n')) });
  await page.getByRole('button', { name: 'Take over these prices' }).click();
  await page.getByRole('link', { name: 'See what it moves' }).click();

  const chest = rowOf('Tool chest for hand tools');
  await chest.waitFor();
  // A hold needs its reason.
  await chest.getByRole('button', { name: /^Hold the price/ }).click();
  await chest.getByRole('button', { name: 'Hold the price', exact: true }).click();
  await chest.getByText('is missing').waitFor();
  await chest
    .getByRole('textbox', { name: 'Why the price quoted stands' })
    .fill('The boards are in the rack.');
  await chest.getByRole('button', { name: 'Hold the price', exact: true }).click();
  await chest.getByText('The boards are in the rack.').waitFor();
  expect(await violations(page)).toEqual([]);

  // It is kept, and the number opens its working.
  await page.reload();
  await chest.getByText('The boards are in the rack.').waitFor();
  await chest.getByRole('button', { name: /^cost moves by/ }).click();
  await page.getByText('cost with the list').first().waitFor();
  expect(errors).toEqual([]);
});

it('tells on the bench that prices have moved under open quotes, until that is decided', async () => {
  await page.goto(application.address);
  const notice = page.getByRole('heading', { name: /^Prices have moved under \d+ open quotes?$/ });
  await notice.waitFor();
  await page.getByRole('link', { name: /Notice of November 2026/ }).click();
  await page.getByRole('heading', { name: 'What this list moves' }).waitFor();
  await page
    .getByRole('button', { name: /^Make a new revision of/ })
    .first()
    .click();
  await page.getByRole('link', { name: 'Open the revision' }).first().click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  expect(errors).toEqual([]);
});

it('compares a cost sheet with itself on an earlier day, cause by cause, by an address that can be sent', async () => {
  await page.goto(`${application.address}/cost-sheets`);
  await page.getByRole('link', { name: 'Hall bench for the Ostrander-Pike stair hall' }).click();
  await page.getByRole('link', { name: 'Compare with ...' }).click();
  await page.getByText('are the same').waitFor();
  await page.getByLabel('Prices of').fill('2025-11-02');
  await page.getByRole('rowheader', { name: /^Price/ }).waitFor();
  expect(page.url()).toContain('onDate=2025-11-02');
  await page.reload();
  await page.getByRole('row', { name: /^price of HK-WALN-54F/ }).waitFor();
  await page.getByRole('button', { name: 'Show as table' }).click();
  await page.getByRole('columnheader', { name: 'Cause' }).waitFor();
  expect(await violations(page)).toEqual([]);
  expect(errors).toEqual([]);
});
