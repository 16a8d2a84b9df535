import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { type RunningApplication, startApplication } from './application.ts';
import { launchBrowser } from './browser.ts';
import { signInAsDemo } from './sign-in-demo.ts';

let application: RunningApplication;
let browser: Browser;
let page: Page;
const errors: string[] = [];

beforeAll(async () => {
  application = await startApplication({ SCANTLING_DEMO: 'on' });
});

// A browser for each test: the one from npm is a single process, which ends with its first page.
beforeEach(async () => {
  browser = await launchBrowser();
  page = await browser.newPage();
  errors.length = 0;
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, application.address);
});
afterEach(async () => {
  await browser?.close();
});
afterAll(async () => {
  await application?.stop();
});

const bring = (name: string, lines: readonly string[]): Promise<void> =>
  page
    .locator('input[type=file][accept*=".csv"]')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(lines.join('\r\n')) });

/** Says which of the file's columns is ours. */
async function match(column: string, header: string): Promise<void> {
  await page
    .getByRole('button', { name: new RegExp(`\\b${column}$`) })
    .first()
    .click();
  await page.getByRole('option', { name: header, exact: true }).click();
}

it('takes a price list over by clicking, and the material shows its new price', async () => {
  await page.getByRole('link', { name: 'Price lists', exact: true }).first().click();
  await page.getByRole('link', { name: 'Import a price list' }).click();
  await page.getByRole('combobox', { name: 'Supplier' }).fill('Hollow');
  await page.getByRole('option', { name: /Hollow Kettle/ }).click();
  await bring('by-telephone.csv', [
    'Told on the telephone; invented',
    'Kennung;Werkstoff;Einheit;Wert',
    'HK-ASH-44F;ash-4-4;BF;7,77',
    'HK-NEW-1;ash-4-4;BF;auf Anfrage',
  ]);

  await page.getByRole('heading', { name: 'Which column is which' }).waitFor();
  await match('code', 'Kennung');
  await match('material', 'Werkstoff');
  await match('price', 'Wert');
  await page.getByRole('button', { name: 'Read with these columns' }).click();

  await page.getByRole('tab', { name: 'Cannot be read 1' }).waitFor();
  await page.getByText('"auf Anfrage" is no number of 0 or more').waitFor();
  await page.getByRole('tab', { name: 'Dearer 1' }).click();
  await page.getByRole('gridcell', { name: '$7.77' }).waitFor();
  await page.getByText('Leave out the row that cannot be read').click();
  await page.getByRole('button', { name: 'Take over these prices' }).click();
  await page.getByText('These prices are taken over.').waitFor();

  await page.getByRole('link', { name: 'Price lists', exact: true }).first().click();
  const done = page.getByRole('grid', { name: 'Imports that are done' });
  await done
    .getByRole('row', { name: /by-telephone\.csv.*Taken over/ })
    .first()
    .waitFor();

  await page.goto(`${application.address}/materials`);
  await page.getByRole('link', { name: 'Ash 4/4 FAS', exact: true }).click();
  await page.getByText('$7.77').first().waitFor();
  await page
    .locator('figure.chart', { hasText: /per bd ft in USD/ })
    .first()
    .waitFor();
  expect(errors).toEqual([]);
});

it('reads a bill with foreign headers, names the cell to mend, and takes the mended file', async () => {
  const rows = (quantity: string): string[] => [
    'Art;Nr;Name;Menge;Holz;lang;breit;dick',
    'part;shelf;Shelf;2;red-oak;36;7 1/2;3/4',
    `part;end;End;${quantity};red-oak;22;7 1/2;3/4`,
  ];
  await page.getByRole('link', { name: 'Designs', exact: true }).first().click();
  await page.getByRole('link', { name: 'Wall shelf', exact: true }).click();
  await page.getByRole('heading', { name: 'Read the bill from a file' }).waitFor();
  await bring('shelf.csv', rows('two'));
  await page.getByRole('heading', { name: 'Which column is which' }).waitFor();
  await match('row', 'Art');
  await match('id', 'Nr');
  await match('material', 'Holz');
  await match('length', 'lang');
  await match('width', 'breit');
  await match('thickness', 'dick');
  await page.getByRole('button', { name: 'Read with these columns' }).click();
  const problems = page.getByRole('grid', { name: 'Problems in the file' });
  await problems.getByRole('row', { name: /quantity.*3.*is "two"/ }).waitFor();

  // The columns are known now.
  await bring('shelf.csv', rows('2'));
  const changes = page.getByRole('grid', { name: 'What the file changes' });
  await changes
    .getByRole('row', { name: /changed.*shelf.*length/ })
    .first()
    .waitFor();
  await changes.getByRole('row', { name: /gone/ }).first().waitFor();
  await page.getByRole('button', { name: 'Take this bill' }).click();
  await page.getByText('Revision').first().waitFor();
  await expect
    .poll(async () => page.getByRole('grid', { name: 'Parts' }).textContent(), { timeout: 20_000 })
    .toContain('36');
  expect(errors).toEqual([]);
});
