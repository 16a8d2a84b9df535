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

async function openCostSheet(
  title = 'Hall bench for the Ostrander-Pike stair hall',
): Promise<{ page: Page; errors: string[] }> {
  const page = await browser.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, application.address);
  await page.getByRole('link', { name: 'Cost sheets', exact: true }).first().click();
  await page.getByRole('link', { name: title }).click();
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

it('costs the same design 150 mm wider at once, down to the parameter, and keeps it only when told', async () => {
  const { page, errors } = await openCostSheet('Tool chest for Tobias Grenfallow');
  const cost = page.getByRole('grid', { name: 'Cost', exact: true });
  const materials = cost.getByRole('button', { name: /^direct materials: /i }).first();
  const before = await materials.textContent();
  const width = page.getByRole('textbox', { name: 'Width over all' });
  expect(await width.inputValue()).toBe('760 mm');

  await width.fill('910');
  await width.press('Enter');
  const against = page.getByRole('list', { name: 'Against as drawn' });
  await against.getByText(/One piece, against as drawn: cost \+\$[1-9]/).waitFor();
  await page.getByText('here +150 mm').waitFor();
  expect(await materials.textContent()).not.toBe(before);

  await page
    .getByRole('grid', { name: 'Parts' })
    .getByRole('button', { name: /^Case top and bottom: rough length/ })
    .click();
  const working = page.getByRole('complementary', { name: 'Working' });
  const parameter = working.getByText('Width over all').first();
  const closed = working.locator('button[data-working-line][aria-expanded=false]');
  for (let depth = 0; depth < 6 && !(await parameter.isVisible()); depth += 1) await closed.first().click();
  await parameter.waitFor();

  await page.getByRole('button', { name: 'Back to what is kept' }).click();
  await against.waitFor({ state: 'detached' });
  expect(await materials.textContent()).toBe(before);
  expect(errors).toEqual([]);
});
