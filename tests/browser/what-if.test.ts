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
beforeEach(async () => {
  browser = await launchBrowser();
});
afterEach(async () => {
  await browser?.close();
});
afterAll(async () => {
  await application?.stop();
});

const SHEET = 'Hall bench for the Ostrander-Pike stair hall';

async function openCostSheet(title = SHEET): Promise<{ page: Page; errors: string[] }> {
  const page = await browser.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, application.address);
  await page.getByRole('link', { name: 'Cost sheets', exact: true }).first().click();
  await page.getByRole('link', { name: title }).click();
  await page.getByRole('grid', { name: 'Cost', exact: true }).waitFor();
  return { page, errors };
}

const strip = (page: Page) => page.getByRole('region', { name: 'What it comes to' });
const netPrice = (page: Page) => strip(page).getByRole('button', { name: /^net price|^list price/i });

/** Finds an input by words and tries a value at it, with the keyboard alone from the search on. */
async function tryValue(page: Page, words: string, field: string | RegExp, value: string): Promise<void> {
  await page.getByRole('searchbox', { name: 'Find an input' }).fill(words);
  const input = page.getByRole('textbox', { name: field }).last();
  await input.focus();
  await input.pressSequentially(value);
  await input.press('Enter');
}

it('tries values, keeps them as a scenario, compares it and leaves the sheet as it was', async () => {
  const { page, errors } = await openCostSheet();
  const standing = await page.getByRole('grid', { name: 'Price', exact: true }).textContent();
  await page.getByRole('button', { name: 'Try other values' }).press('Enter');
  await strip(page).getByText('nothing tried yet').waitFor();
  const before = await netPrice(page).textContent();

  await tryValue(page, 'owner pay', 'Try another value for Owner: pay', 'much');
  await page.getByText('Write a number, such as 12.5.').waitFor();
  await page.getByRole('textbox', { name: 'Try another value for Owner: pay' }).fill('');
  await tryValue(page, 'owner pay', 'Try another value for Owner: pay', '48');
  await strip(page).getByText('1 value tried').waitFor();
  await tryValue(page, 'walnut 5/4 yield', /Walnut 5\/4 FAS: yield/, '70');
  await strip(page).getByText('2 values tried').waitFor();
  const after = await netPrice(page).textContent();
  expect(after).not.toBe(before);
  expect(await netPrice(page).getAttribute('aria-label')).toContain(`was ${before?.trim()}`);
  expect(await violations(page)).toEqual([]);

  await page.getByRole('button', { name: 'Undo' }).press('Enter');
  await strip(page).getByText('1 value tried').waitFor();
  await page.getByRole('button', { name: 'Redo' }).press('Enter');
  await strip(page).getByText('2 values tried').waitFor();
  await page.reload();
  await strip(page).getByText('2 values tried').waitFor();
  expect(await netPrice(page).textContent()).toBe(after);

  await page.getByRole('button', { name: 'Keep as a scenario' }).press('Enter');
  await page.getByRole('textbox', { name: 'Name' }).fill('Owner dearer, better boards');
  await page.getByRole('textbox', { name: 'Note' }).fill('for the talk in spring');
  await page.keyboard.press('Enter');
  await page.getByRole('rowheader', { name: /^Owner dearer, better boards/ }).waitFor();

  await strip(page).getByRole('button', { name: 'Put all back' }).click();
  await strip(page).getByRole('button', { name: 'Stop trying' }).click();
  await strip(page).waitFor({ state: 'detached' });
  expect(await page.getByRole('grid', { name: 'Price', exact: true }).textContent()).toBe(standing);

  await page.getByRole('link', { name: 'Compare side by side' }).click();
  const results = page.getByRole('table', { name: 'Results side by side' });
  await results.waitFor();
  expect(await results.getByRole('columnheader').allTextContents()).toEqual([
    'Result',
    'As it stands',
    'Legs turned after a pattern',
    'Owner dearer, better boards',
    'Walnut a tenth dearer',
  ]);
  const row = results.getByRole('row', { name: /^Net price/ });
  expect(await row.getByRole('cell').nth(2).textContent()).toContain(after?.trim());
  expect(await violations(page)).toEqual([]);
  // The address says it all: sent to somebody, it shows the same.
  await page.goto(page.url());
  expect(await results.getByRole('row', { name: /^Net price/ }).textContent()).toBe(await row.textContent());
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(errors).toEqual([]);
});

it('tries a value in the working, takes it over here only, and takes it back', async () => {
  const { page, errors } = await openCostSheet('Step stool for the kitchen');
  await page.getByRole('button', { name: 'Try other values' }).click();
  const net = await netPrice(page).textContent();
  await page
    .getByRole('grid', { name: 'Price', exact: true })
    .getByRole('button', { name: /^hours of a piece/i })
    .first()
    .click();
  const working = page.getByRole('complementary', { name: 'Working' });
  const field = working.getByRole('textbox', { name: /^Try another value for .*run time/ }).first();
  const closed = working.locator('button[data-working-line][aria-expanded=false]');
  for (let depth = 0; depth < 6 && !(await field.isVisible()); depth += 1) await closed.first().click();
  await field.fill('9');
  await field.press('Enter');
  await strip(page).getByText('1 value tried').waitFor();
  expect(await netPrice(page).textContent()).not.toBe(net);
  await page.keyboard.press('Escape');
  await working.waitFor({ state: 'detached' });

  await page.getByRole('button', { name: 'Take over ...' }).click();
  await page
    .getByRole('region', { name: 'What it changes' })
    .getByText('an own value of this cost sheet')
    .waitFor();
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Take over', exact: true }).click();
  const own = page.getByRole('table', { name: 'Own values' });
  await own.getByText(/entered by .* for this cost sheet, instead of/).waitFor();
  await strip(page).waitFor({ state: 'detached' });

  await own.getByRole('button', { name: /^Take back the own value/ }).click();
  await own.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Try other values' }).click();
  expect(await netPrice(page).textContent()).toBe(net);
  expect(errors).toEqual([]);
});

it('takes a value over everywhere it is used, after a look at what else rests on it', async () => {
  const { page, errors } = await openCostSheet('Bookcases for the reading room');
  await page.getByRole('button', { name: 'Try other values' }).click();
  await tryValue(page, 'helper pay', 'Try another value for Helper: pay', '22');
  await page.getByRole('button', { name: 'Take over ...' }).click();
  await page.getByRole('button', { name: 'All everywhere' }).click();
  const foreseen = page.getByRole('region', { name: 'What it changes' });
  await foreseen.getByText('labour grade "Helper"').waitFor();
  await foreseen.getByRole('link', { name: SHEET }).waitFor();
  await page.getByRole('button', { name: 'Take over', exact: true }).click();
  await strip(page).waitFor({ state: 'detached' });
  await page.goto(`${application.address}/labour-grades`);
  await page.getByRole('link', { name: 'Helper' }).click();
  await page.getByRole('textbox', { name: /^Pay/ }).waitFor();
  expect(await page.getByRole('textbox', { name: /^Pay/ }).inputValue()).toBe('22');
  expect(errors).toEqual([]);
});
