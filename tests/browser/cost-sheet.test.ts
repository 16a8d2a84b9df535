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

async function openCostSheet(): Promise<{ page: Page; errors: string[] }> {
  const page = await browser.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, application.address);
  await page.getByRole('link', { name: 'Cost sheets', exact: true }).first().click();
  await page.getByRole('link', { name: 'Hall bench for the Ostrander-Pike stair hall' }).click();
  await page.getByRole('grid', { name: 'Cost', exact: true }).waitFor();
  return { page, errors };
}

it('opens the working of a cost down to the line of the price list', async () => {
  const { page, errors } = await openCostSheet();
  const cost = page.getByRole('grid', { name: 'Cost', exact: true });
  await cost
    .getByRole('button', { name: /^direct materials: /i })
    .first()
    .click();
  const working = page.getByRole('complementary', { name: 'Working' });
  await working.getByRole('heading', { name: 'direct materials' }).waitFor();
  expect(new URL(page.url()).searchParams.get('figure')).toMatch(/directMaterials$/);

  // Opens the first closed line again and again, as deep as the working goes.
  const source = working.getByText('Price list', { exact: true }).first();
  for (let depth = 0; depth < 12 && !(await source.isVisible()); depth += 1) {
    const closed = working.locator('button[data-working-line][aria-expanded=false]');
    await closed.last().click();
  }
  await source.waitFor();
  expect(await source.locator('..').textContent()).toMatch(/^Price list .+ of \d{4}-\d{2}-\d{2}, line \d+/);

  await page.keyboard.press('Escape');
  await working.waitFor({ state: 'detached' });
  expect(errors).toEqual([]);
});

it('works the sheet out again when its terms are saved', async () => {
  const { page, errors } = await openCostSheet();
  const freight = page
    .getByRole('grid', { name: 'Cost', exact: true })
    .getByRole('row', { name: /^Freight/ })
    .getByRole('button')
    .first();
  const before = await freight.textContent();
  const field = page.getByRole('textbox', { name: 'Freight' });

  await field.fill('a lot');
  await page.getByRole('button', { name: 'Save and work out' }).click();
  await page.getByText('"a lot" is no number of 0 or more.').waitFor();
  expect(await freight.textContent()).toBe(before);

  await field.fill('123.45');
  await page.getByRole('button', { name: 'Save and work out' }).click();
  await page.getByText('$123.45').first().waitFor();
  expect(await freight.textContent()).toBe('$123.45');
  expect(errors).toEqual([]);
});
