import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type RunningApplication, startApplication } from './application.ts';
import { launchBrowser } from './browser.ts';

let application: RunningApplication;
let browser: Browser;

// Without the demo: the rates of a workshop that starts with nothing.
beforeAll(async () => {
  application = await startApplication();
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  await application?.stop();
});

const fill = async (page: Page, fields: Readonly<Record<string, string>>): Promise<void> => {
  for (const [name, text] of Object.entries(fields))
    await page.getByRole('textbox', { name, exact: true }).fill(text);
};
const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true }).click();

async function goTo(page: Page, group: string, screen: string, act?: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`^${group}`) }).click();
  await page
    .getByRole('navigation', { name: 'Index' })
    .getByRole('link', { name: screen, exact: true })
    .click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  if (act !== undefined) await page.getByRole('link', { name: act }).first().click();
}

/** The text of the cell of a row and the column with this head. */
async function cellOf(page: Page, grid: string, row: RegExp, head: string): Promise<string | undefined> {
  const table = page.getByRole('grid', { name: grid, exact: true });
  const line = table.getByRole('row', { name: row });
  await line.waitFor();
  const heads = await table.getByRole('columnheader').allInnerTexts();
  const texts = await line.locator('th, td').allInnerTexts();
  return texts[heads.findIndex((text) => text.trim() === head)]?.trim();
}

it('a new owner enters a machine, a labour grade and a yearly amount and reads what an hour costs', async () => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  const link = /Set up the owner: (\S+)/.exec(application.output())?.[1] ?? '';
  await page.goto(link);
  await fill(page, {
    'Name of the workshop': 'Fenwick Bench Rooms',
    'Your name': 'Ada Fenwick',
    'E-mail address': 'ada@fenwick.example',
    Password: 'a sharp plane sings',
  });
  await page.getByRole('combobox', { name: 'Currency' }).fill('USD');
  await page.getByRole('option', { name: 'USD' }).click();
  await page.getByRole('button', { name: 'Set up' }).click();
  await page.getByRole('heading', { name: 'Bench', level: 1 }).waitFor();
  const steps = page.getByRole('region', { name: 'To a first priced piece' }).getByRole('listitem');
  await steps.filter({ hasText: 'Enter a machine' }).waitFor();
  expect(await steps.filter({ hasText: 'entered' }).count()).toBe(0);

  // Miyata 1980, USDA Forest Service GTR NC-55, default case: owning costs of 24,004 a year; over 1254.24 hours 19.14.
  await goTo(page, 'Rates', 'Tools', 'Enter a tool');
  await fill(page, {
    Name: 'Machine',
    Code: 'machine',
    Paid: '85000',
    'Replacement cost': '85000',
    'Salvage value': '17000',
    Life: '5',
    'Productive hours': '1254.24',
    'Interest a year': '12',
    'Insurance and tax a year': '6',
    Maintenance: '0',
  });
  await save(page);
  const rates = 'Machine-hour rate';
  expect(await cellOf(page, rates, /^Owning it for a year/, 'Replacement')).toContain('24,004.00');
  expect(await cellOf(page, rates, /^Average investment/, 'Replacement')).toContain('57,800.00');
  expect(await cellOf(page, rates, /^An hour of it/, 'Replacement')).toContain('19.14');

  // University of Illinois farmdoc, tractor cost table: 13.50 an hour with ten percent on top is 14.85.
  await goTo(page, 'Rates', 'Labour grades', 'Enter a labour grade');
  await fill(page, {
    Name: 'Driver',
    Code: 'driver',
    'Pay for a paid hour': '13.50',
    Burden: '10',
    'Productive share': '100',
  });
  await save(page);
  await goTo(page, 'Rates', 'Labour grades');
  expect(await cellOf(page, 'Labour rates', /^Driver/, 'Productive hour')).toContain('14.85');

  // OpenStax, Principles of Accounting 2, section 6.1: 2,500,000 over 1,250,000 hours is 2.00 an hour.
  await goTo(page, 'Workshop', 'Workshop');
  const pool = page.getByRole('group', { name: 'Workshop overhead' });
  await pool.getByRole('textbox', { name: 'Planned' }).fill('1250000');
  await save(page);
  await page.getByText('Saved', { exact: true }).waitFor();
  await goTo(page, 'Rates', 'Overhead', 'Enter a yearly amount');
  await fill(page, { Name: 'Being open', Amount: '2500000' });
  await save(page);
  await goTo(page, 'Rates', 'Overhead');
  expect(await cellOf(page, 'Overhead pools', /^Workshop/, 'Planned rate')).toContain('2.00');

  // What was entered is known on the bench, and the first of the rest is what to do next.
  await page.getByRole('link', { name: 'Bench', exact: true }).click();
  const entered = steps.filter({ hasText: /entered$/ });
  await entered.filter({ hasText: 'Enter a yearly cost' }).waitFor();
  expect(await entered.getByRole('link').allInnerTexts()).toEqual([
    'Enter a machine',
    'Enter a labour grade',
    'Enter a yearly cost',
  ]);
  expect(errors).toEqual([]);
});
