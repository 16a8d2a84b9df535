import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { acceptedQuote } from './accepted-quote.ts';
import { runningProduct } from './running-product.ts';
import { signInAsDemo } from './sign-in-demo.ts';
import { violations } from './violations.ts';

const product = runningProduct();

/** The sum under a label, as it is written. */
function sum(page: Page, label: string) {
  return page.locator('.money-sums > div').filter({ hasText: label }).getByRole('button');
}

it('an accepted quote is billed by a deposit and a final invoice less it, and owes nothing once both are paid', async () => {
  const page = await product.browser.newPage({ viewport: { width: 1440, height: 900 } });
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, product.address);
  const quoteId = await acceptedQuote(page, {
    title: 'A chest, billed in two',
    quantity: '1',
    price: '1000',
  });

  await page.goto(`${product.address}/quotes/${quoteId}`);
  await page.getByRole('link', { name: 'Money', exact: true }).click();
  await page.getByRole('button', { name: 'Prepare the invoice: On acceptance' }).click();
  await page.getByRole('button', { name: 'Issue the deposit invoice' }).click();

  // 1,000 + 19 % = 1,190; 40 % of it = 476, worked out by hand.
  await page.getByRole('heading', { name: /^Deposit invoice INV-/, level: 1 }).waitFor();
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$476.00');
  await page.getByRole('textbox', { name: 'Amount', exact: true }).fill('500000000000000');
  await page.getByRole('button', { name: 'Enter the payment' }).click();
  await page.getByRole('alert').waitFor();
  await page.getByRole('textbox', { name: 'Amount', exact: true }).fill('476');
  await page.getByRole('button', { name: 'Enter the payment' }).click();
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$0.00');
  await page.getByRole('region', { name: 'Payments entered' }).getByRole('link').waitFor();
  expect(await violations(page)).toEqual([]);

  await page.getByRole('link', { name: 'All money of the quote' }).click();
  await page.getByRole('button', { name: 'Look at it' }).click();
  await expect.poll(() => sum(page, 'This invoice').textContent()).toBe('$714.00');
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Issue the final invoice' }).click();
  await page.getByRole('heading', { name: /^Final invoice INV-/, level: 1 }).waitFor();
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$714.00');
  await page.getByText(/^Less deposit invoice INV-/).waitFor();
  await page.getByRole('button', { name: 'Enter the payment' }).click();
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$0.00');

  await page.getByRole('link', { name: 'All money of the quote' }).click();
  await expect.poll(() => sum(page, 'Left to invoice').textContent()).toBe('$0.00');
  await expect.poll(() => sum(page, 'Owed').textContent()).toBe('$0.00');
  expect(errors).toEqual([]);
});
