import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { runningProduct } from './running-product.ts';
import { signInAsDemo } from './sign-in-demo.ts';
import { violations } from './violations.ts';

const SCREENS = [
  '/',
  '/designs',
  '/cost-sheets',
  '/quotes',
  '/quotes/new',
  '/invoices',
  '/invoices/overdue',
  '/clients',
  '/enquiries',
  '/enquiries/new',
  '/mail',
  '/price-lists',
  '/price-lists/articles',
  '/materials',
  '/suppliers',
  '/exchange-rates',
  '/tools',
  '/labour-grades',
  '/overhead',
  '/workshop',
  '/workshop?part=letterhead',
  '/workshop?part=quoting',
  '/people',
  '/users',
  '/api-tokens',
];

const product = runningProduct();

async function signedInAt(width: number, height: number): Promise<{ page: Page; errors: string[] }> {
  const page = await product.browser.newPage({ viewport: { width, height } });
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await signInAsDemo(page, product.address);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  return { page, errors };
}

async function open(page: Page, screen: string): Promise<void> {
  await page.goto(`${product.address}${screen}`);
  await page.getByRole('heading', { level: 1 }).first().waitFor();
  await page.waitForLoadState('networkidle');
}

it('a design with a cell open, its choices hanging below, is without a violation of WCAG', async () => {
  const { page } = await signedInAt(1440, 900);
  await open(page, '/designs');
  await page.getByRole('link', { name: 'Hall bench on turned legs' }).click();
  const parts = page.getByRole('grid', { name: 'Parts', exact: true });
  await parts.waitFor();
  expect(await violations(page)).toEqual([]);
  await parts.locator('[data-row="0"][data-column="3"]').click();
  await page.keyboard.type('two');
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.type('wal');
  await page.getByRole('listbox').waitFor();
  expect(await violations(page)).toEqual([]);
});

it('a group of the index strip opens, leads on and is without a violation of WCAG', async () => {
  const { page } = await signedInAt(1024, 800);
  await open(page, '/tools');
  const strip = page.getByRole('navigation', { name: 'Index' });
  const height = (await strip.boundingBox())?.height ?? 99;
  expect(height).toBeLessThanOrEqual(40);
  await strip.getByRole('button', { name: 'Prices' }).click();
  expect(await violations(page)).toEqual([]);
  await page.keyboard.press('Escape');
  expect(await strip.getByRole('link', { name: 'Materials' }).count()).toBe(0);
  await page.keyboard.press('Enter');
  await strip.getByRole('link', { name: 'Materials' }).click();
  await page.getByRole('heading', { name: 'Materials', level: 1 }).waitFor();
  await strip.getByRole('button', { name: /Prices.*Materials/ }).waitFor();
});

it('an early price as it was given is without a violation of WCAG and fits a phone', async () => {
  const { page, errors } = await signedInAt(390, 844);
  const { items } = await (await page.request.get(`${product.address}/api/enquiries?limit=200`)).json();
  const counts: [string, number][] = [];
  for (const { id } of items) {
    const answer = await page.request.get(`${product.address}/api/enquiries/${id}/early-prices`);
    counts.push([id, (await answer.json()).items.length]);
  }
  const [enquiry] = counts.find(([, count]) => count > 0) ?? [];
  expect(enquiry).toBeDefined();
  await open(page, `/enquiries/${enquiry}/early-prices/1`);
  await page.getByRole('status', { name: 'Early price' }).waitFor();
  expect(await violations(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(errors).toEqual([]);
});

describe('every screen of the index strip', () => {
  it('stands in a wide window without a violation of WCAG or an error in the console', async () => {
    const { page, errors } = await signedInAt(1440, 900);
    const found: Record<string, string[]> = {};
    for (const screen of SCREENS) {
      await open(page, screen);
      const here = await violations(page);
      if (here.length > 0) found[screen] = here;
    }
    expect(found).toEqual({});
    expect(errors).toEqual([]);
  });

  it('fits a phone without scrolling sideways', async () => {
    const { page } = await signedInAt(390, 844);
    const tooWide: string[] = [];
    for (const screen of SCREENS) {
      await open(page, screen);
      if (await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth))
        tooWide.push(screen);
    }
    expect(tooWide).toEqual([]);
  });
});
