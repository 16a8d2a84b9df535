import type { Page } from 'playwright-core';

/** Signs in as the demo, as the README gives it; it holds on the machine itself only. */
export async function signInAsDemo(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('textbox', { name: /mail/i }).fill('demo@scantling.example');
  await page.locator('input[type=password]').fill('plane-and-scraper');
  await page.getByRole('button', { name: /sign in/i }).click();
  await page.getByRole('link', { name: 'Cost sheets', exact: true }).first().waitFor();
}
