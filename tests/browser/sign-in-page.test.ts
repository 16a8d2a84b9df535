import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type RunningApplication, startApplication } from './application.ts';
import { launchBrowser } from './browser.ts';

let application: RunningApplication;
let browser: Browser;

beforeAll(async () => {
  application = await startApplication();
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser?.close();
  await application?.stop();
});

it('shows a visitor the sign-in page, without an error in the console', async () => {
  const page = await browser.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(application.address);
  await page.getByRole('textbox', { name: /mail/i }).waitFor();
  await page.getByRole('button', { name: /sign in/i }).waitFor();
  expect(new URL(page.url()).pathname).toBe('/sign-in');
  // Without the demo nobody has an account yet: the page says how the first one is made.
  await page.getByText(/one-time link/i).waitFor();
  expect(application.output()).toMatch(/Set up the owner: http:\/\/\S+\/set-up#\S+/);
  expect(errors).toEqual([]);
});
