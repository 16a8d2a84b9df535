import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { runningProduct } from './running-product.ts';
import { signInAsDemo } from './sign-in-demo.ts';
import { violations } from './violations.ts';

const product = runningProduct();
const IN_TIME = { timeout: 60_000 };

async function openQuestion(words: string): Promise<{ page: Page; errors: string[] }> {
  const page = await product.browser.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, product.address);
  await page.getByRole('link', { name: 'Cost sheets', exact: true }).first().click();
  await page.getByRole('link', { name: 'Hall bench for the Ostrander-Pike stair hall' }).click();
  await page.getByRole('grid', { name: 'Cost', exact: true }).waitFor(IN_TIME);
  await page.getByRole('link', { name: words }).click();
  return { page, errors };
}

/** The page in the dark, then in the light again. */
async function violationsInBothThemes(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    found.push(...(await violations(page)).map((one) => `${colorScheme}: ${one}`));
  }
  return found;
}

it('draws what moves the price, walked by keyboard down to the record of a value', async () => {
  const { page, errors } = await openQuestion('What moves it ...');
  const bars = page.locator('.moves-bars').getByRole('button', { name: /the net price is/ });
  await bars.first().waitFor(IN_TIME);
  await page.getByText(/moves the net price most: at /).waitFor();
  expect(await violationsInBothThemes(page)).toEqual([]);

  const before = await bars.count();
  await bars.first().focus();
  await page.keyboard.press('ArrowDown');
  const second = await bars.nth(1).getAttribute('aria-label');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(second);
  await page.keyboard.press('Enter');
  const working = page.getByRole('complementary', { name: 'Working' });
  await working.getByRole('heading', { name: second?.split(': at ')[0] ?? '' }).waitFor();
  await page.keyboard.press('Escape');
  await working.waitFor({ state: 'detached' });

  await page.getByRole('button', { name: /Each value up and down by/ }).click();
  await page.getByRole('option', { name: 'another share' }).click();
  await page.getByRole('textbox', { name: 'By' }).fill('250');
  await page.keyboard.press('Enter');
  await page.getByText(/is not a share from 0 to 1/).waitFor(IN_TIME);
  await page.getByRole('textbox', { name: 'By' }).fill('15');
  await page.keyboard.press('Enter');
  await page.getByText(/moves the net price most: at /).waitFor(IN_TIME);
  expect(new URL(page.url()).searchParams.get('move')).toMatch(/^"?15"?$/);

  await page.getByRole('button', { name: 'Show as table' }).click();
  const rows = page.getByRole('table').getByRole('row');
  expect(await rows.count()).toBeGreaterThan(before / 2);
  await rows.nth(1).getByRole('button').last().click();
  await working.getByRole('heading', { name: /^swing by / }).waitFor();
  expect(errors).toEqual([]);
});

it('finds what a time must be for the price as it stands to leave nothing, and tries it on the sheet', async () => {
  const { page, errors } = await openQuestion('What moves it ...');
  await page.getByRole('link', { name: 'What it takes' }).click();
  await page.getByRole('link', { name: /take before the price as it stands leaves nothing/ }).click();
  const answer = page.getByText(
    /^For the price as it stands, \$[\d,.]+, to leave nothing, “.+” must be .+ h\./,
  );
  await answer.waitFor(IN_TIME);
  expect(await page.getByRole('textbox', { name: 'comes to' }).inputValue()).toBe('0');
  expect(await violationsInBothThemes(page)).toEqual([]);
  const said = (await answer.textContent())?.match(/must be ([\d.]+ h)\./)?.[1] ?? 'nothing';

  await page.getByRole('textbox', { name: 'comes to' }).fill('plenty');
  await page.keyboard.press('Enter');
  await page.getByText('comes to cannot be “plenty”.').waitFor();
  await page.getByRole('textbox', { name: 'comes to' }).fill('100');
  await page.keyboard.press('Enter');
  await page.getByText(/^No value of “.+” between .+ is enough/).waitFor(IN_TIME);

  await page.goBack();
  await answer.waitFor(IN_TIME);
  await page.getByRole('button', { name: `Try ${said} on the sheet` }).click();
  await page.getByRole('region', { name: 'What it comes to' }).getByText('1 value tried').waitFor(IN_TIME);
  expect(errors).toEqual([]);
});

it('says how sure the cost is, the same for the same seed, and takes its contingency into the terms', async () => {
  const { page, errors } = await openQuestion('What moves it ...');
  await page.getByRole('link', { name: 'How sure it is' }).click();
  const answer = page.getByText(/^In 8 of 10 runs “.+” costs \$[\d,.]+ or less\./);
  await answer.waitFor(IN_TIME);
  expect(await violationsInBothThemes(page)).toEqual([]);
  const first = await answer.textContent();

  const seed = page.getByRole('textbox', { name: 'Seed' });
  const table = page.getByRole('region', { name: /by share of the runs/ });
  const costs = () => table.getByRole('row').allTextContents();
  const before = await costs();
  await seed.fill('12');
  await page.keyboard.press('Enter');
  await page.getByText(/runs, seed 12;/).waitFor(IN_TIME);
  expect(await costs()).not.toEqual(before);
  await seed.fill('1');
  await page.keyboard.press('Enter');
  await page.getByText(/runs, seed 1;/).waitFor(IN_TIME);
  expect(await answer.textContent()).toBe(first);
  expect(await costs()).toEqual(before);

  await page.getByRole('combobox', { name: 'Input' }).fill('freight to the client');
  await page.getByRole('option', { name: /freight to the client/ }).click();
  await page.getByRole('textbox', { name: 'At the least' }).fill('60');
  await page.getByRole('textbox', { name: 'Likely' }).fill('85');
  await page.getByRole('textbox', { name: 'At the most' }).fill('a lot');
  await page.getByRole('button', { name: 'Add it' }).click();
  await page.getByText(/cannot be “a lot”/).waitFor();
  await page.getByRole('textbox', { name: 'At the most' }).fill('300');
  await page.getByRole('button', { name: 'Add it' }).click();
  await page.getByRole('button', { name: 'Leave out freight to the client' }).waitFor(IN_TIME);

  await page.getByRole('button', { name: /^Put .+ into the terms, in place of 5\.0/ }).click();
  await page.getByText('The terms hold this contingency.').waitFor(IN_TIME);
  expect(errors).toEqual([]);
});
