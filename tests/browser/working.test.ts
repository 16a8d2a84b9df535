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

async function signedIn(width = 1440, height = 900): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height } });
  await signInAsDemo(page, application.address);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  return page;
}

const rail = (page: Page) => page.getByRole('complementary', { name: 'Working' });
const focused = (page: Page) =>
  page.evaluate(
    () => document.activeElement?.getAttribute('data-figure') ?? document.activeElement?.className,
  );

it('from the list of tools an hour leads to its working, told in sentences, walked and closed by keys', async () => {
  const page = await signedIn();
  await page.goto(`${application.address}/tools`);
  const hour = page.getByRole('link', { name: /machine-hour rate \(replacement\): .*, working/ }).first();
  await hour.focus();
  await page.keyboard.press('Enter');
  await rail(page)
    .getByRole('heading', { name: /machine-hour rate/ })
    .waitFor();
  expect(new URL(page.url()).searchParams.get('figure')).toBe('replacement/per-hour');
  expect(await rail(page).locator('.working-told').textContent()).toMatch(/ per h [=≈] /);
  expect(await violations(page)).toEqual([]);

  const first = rail(page).locator('button[data-working-line]').first();
  await first.focus();
  await page.keyboard.press('ArrowRight');
  expect(await first.getAttribute('aria-expanded')).toBe('true');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowLeft');
  expect(await first.evaluate((line) => line === document.activeElement)).toBe(true);
  await page.keyboard.press('Escape');
  await rail(page).waitFor({ state: 'detached' });
  // Opened by an address, so that nothing had the focus before: it goes to the figure itself.
  expect(await focused(page)).toBe('replacement/per-hour');
});

it('an address of a figure opens a quote at it, on a phone in what the working leaves free', async () => {
  const page = await signedIn(390, 844);
  const { items } = await (await page.request.get(`${application.address}/api/quotes?state=sent`)).json();
  await page.goto(`${application.address}/quotes/${items[0].id}?figure=sent:total`);
  await rail(page).getByRole('heading', { level: 2 }).waitFor();
  const figure = page.locator('[data-figure="sent:total"]').first();
  await figure.waitFor();
  await expect
    .poll(async () => {
      const [box, cover] = await Promise.all([figure.boundingBox(), rail(page).boundingBox()]);
      return box !== null && cover !== null && box.y >= 0 && box.y + box.height <= cover.y;
    })
    .toBe(true);
  expect(await violations(page)).toEqual([]);
  expect(await rail(page).getByRole('button', { name: 'Copy its address' }).isVisible()).toBe(true);
  await rail(page).getByRole('button', { name: 'Close' }).click();
  await rail(page).waitFor({ state: 'detached' });
  expect(await focused(page)).toBe('sent:total');
});

it('says so when the figure of an address is not there any more', async () => {
  const page = await signedIn();
  await page.goto(`${application.address}/labour-grades?figure=gone`);
  await rail(page).getByText('does not stand on this sheet any more').waitFor();
  expect(await violations(page)).toEqual([]);
});
