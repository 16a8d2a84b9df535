import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { type RunningApplication, startApplication } from './application.ts';
import { launchBrowser } from './browser.ts';
import { signInAsDemo } from './sign-in-demo.ts';

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

const PHONE = { width: 390, height: 844 };

async function workshop(): Promise<{ page: Page; errors: string[] }> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, application.address);
  return { page, errors };
}

/** Begins a quote on a cost sheet of the demo. */
async function beginFromSheet(page: Page, title: string): Promise<void> {
  await page.goto(`${application.address}/cost-sheets`);
  await page.getByRole('link', { name: 'Hall bench for the Ostrander-Pike stair hall' }).click();
  await page.getByRole('link', { name: 'Quote this piece' }).click();
  // The cost sheet has a title too, which stands until the next screen is there.
  await page.getByRole('heading', { name: 'New quote', level: 1 }).waitFor();
  await page.getByRole('textbox', { name: 'Title' }).fill(title);
  await page.getByRole('button', { name: 'Begin the quote' }).click();
  await page.waitForURL(/\/quotes\/[0-9a-f-]{36}/);
  await page.getByRole('heading', { name: title, level: 1 }).waitFor();
  await page.getByRole('button', { name: /^Move .*, place 1 of 1/ }).waitFor();
}

/** Saves the draft, looks at what the client gets, and sends it. @returns the client's link */
async function send(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'See it and send it' }).click();
  await page.getByRole('button', { name: /^Send it to/ }).click();
  const link = page.getByRole('link', { name: /\/offers\/[\w-]{43}$/ });
  await link.waitFor();
  return new URL((await link.getAttribute('href')) ?? '', application.address).href;
}

/** The client's browser: another one, on a phone, signed in nowhere. */
async function asClient(link: string): Promise<{ page: Page; asked: string[]; answers: string[] }> {
  const context = await browser.newContext({ viewport: PHONE });
  const page = await context.newPage();
  const asked: string[] = [];
  const answers: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('response', async (response) => {
    if (response.url().includes('/api/')) answers.push(await response.text().catch(() => ''));
  });
  await page.goto(link);
  return { page, asked, answers };
}

it('a piece goes from its cost sheet to an offer that the client accepts with an option', async () => {
  const { page, errors } = await workshop();
  await beginFromSheet(page, 'Bench with a cushion');
  await page.getByRole('button', { name: 'Add a line of your own' }).click();
  await page.getByRole('textbox', { name: 'Description' }).fill('Cushion, wool felt');
  await page.getByRole('textbox', { name: 'Price of one' }).fill('85.50');
  await page.getByRole('textbox', { name: 'What the line costs you' }).fill('41.25');
  await page.getByRole('button', { name: /Taken/ }).click();
  await page.getByRole('option', { name: /If the client wants it/ }).click();
  const reckoning = page.getByRole('region', { name: 'What it comes to' });
  const total = reckoning.getByRole('button', { name: /^total: / });
  const without = (await total.textContent()) ?? '';
  await page.getByRole('checkbox', { name: 'Reckon with Cushion, wool felt' }).press('Space');
  await expect.poll(() => total.textContent()).not.toBe(without);
  await page.getByRole('button', { name: 'Save the draft' }).click();
  const link = await send(page);

  const { page: phone, asked, answers } = await asClient(link);
  await phone.getByRole('heading', { name: 'Bench with a cushion', level: 1 }).waitFor();
  expect(await phone.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
  const running = phone.getByRole('status').filter({ hasText: 'As chosen, with tax' });
  expect(await running.textContent()).toContain(without);
  await phone.getByRole('checkbox', { name: /Cushion, wool felt/ }).check();
  await expect.poll(() => running.textContent()).not.toContain(without);
  const chosenTotal = (await running.locator('strong').textContent()) ?? '';
  await phone.getByRole('button', { name: `Accept for ${chosenTotal}` }).click();
  await phone.getByText('Write who accepts, first and last name.').waitFor();
  await phone.getByRole('textbox', { name: 'Your name' }).fill('Ottoline Marsh (invented)');
  await phone.getByRole('button', { name: `Accept for ${chosenTotal}` }).click();
  await phone.getByRole('heading', { name: 'Accepted' }).waitFor();
  await phone.getByText('Ottoline Marsh (invented) accepted this offer', { exact: false }).waitFor();

  expect(asked.filter((url) => !url.startsWith(application.address))).toEqual([]);
  expect(answers.join('\n')).not.toMatch(/41\.25|costSheetId|"cost"|margin|hourlyEarnings/i);

  await page.reload();
  await page.getByText('Accepted by Ottoline Marsh (invented)', { exact: false }).waitFor();
  const agreed = page.getByRole('region', { name: 'Agreed in all' });
  expect(await agreed.textContent()).toContain(chosenTotal);
  await page.goto(`${application.address}/mail`);
  await page
    .getByRole('link', { name: /Bench with a cushion/ })
    .first()
    .waitFor();
  expect(errors).toEqual([]);
});

it('a link that was replaced says so, and one that leads nowhere too', async () => {
  const { page } = await workshop();
  await beginFromSheet(page, 'Bench, first thoughts');
  const first = await send(page);
  await page.getByRole('button', { name: 'Revise' }).click();
  await page.getByRole('button', { name: 'See it and send it' }).waitFor();
  const second = await send(page);
  expect(second).not.toBe(first);

  const { page: phone } = await asClient(first);
  await phone.getByRole('heading', { name: 'Replaced by a newer offer' }).waitFor();
  expect(await phone.getByRole('button', { name: /Accept/ }).count()).toBe(0);
  await phone.goto(second);
  await phone.getByRole('heading', { name: 'Bench, first thoughts', level: 1 }).waitFor();
  await phone.goto(`${application.address}/offers/${'x'.repeat(43)}`);
  await phone.getByRole('heading', { name: 'No offer stands behind this link' }).waitFor();
});

it('changes of a draft that are not saved come back, and lines are moved by keys', async () => {
  const { page } = await workshop();
  await beginFromSheet(page, 'Bench, unsaved');
  await page.getByRole('button', { name: 'Add delivery' }).click();
  await page.getByRole('textbox', { name: 'Price', exact: true }).fill('120');
  await page.getByRole('button', { name: /^Move Delivery, place 2 of 2/ }).press('Alt+ArrowUp');
  await page.getByRole('button', { name: /^Move Delivery, place 1 of 2/ }).waitFor();
  page.on('dialog', (dialog) => void dialog.accept());
  await page.reload();
  await page.getByText('These changes were made before and not saved.').waitFor();
  await page.getByRole('button', { name: /^Move Delivery, place 1 of 2/ }).waitFor();
  await page.getByRole('button', { name: 'Drop changes' }).click();
  await page.getByRole('button', { name: /^Move Delivery/ }).waitFor({ state: 'detached' });
});
