import type { Browser, Page } from 'playwright-core';
import { expect } from 'vitest';
import { demoPage, type GridHands, gridHandsOn } from './design-hands.ts';

export const PHONE = { width: 390, height: 844 };

/** What somebody does at the sheet of a quote. */
export interface QuoteHands extends GridHands {
  /** Begins a quote on the demo's cost sheet of the hall bench. */
  readonly begin: (title: string) => Promise<void>;
  /** Saves what is changed. */
  readonly save: () => Promise<void>;
  /** Looks at what the client gets, and sends it. @returns the client's link */
  readonly send: () => Promise<string>;
  /** Puts the focus into a cell of the lines. */
  readonly goToCell: (row: number, header: string) => Promise<void>;
}

/** Signed in as the demo, at quotes. */
export async function quoteHands(browser: Browser, address: string): Promise<QuoteHands> {
  const page = await demoPage(browser, address);
  const hands = gridHandsOn(page);
  const lines = hands.grid('Lines');
  return {
    ...hands,
    begin: async (title) => {
      await page.goto(`${address}/cost-sheets`);
      await page.getByRole('link', { name: 'Hall bench for the Ostrander-Pike stair hall' }).click();
      await page.getByRole('link', { name: 'Quote this piece' }).click();
      // The cost sheet has a title too, which stands until the next screen is there.
      await page.getByRole('heading', { name: 'New quote', level: 1 }).waitFor();
      await page.getByRole('textbox', { name: 'Title' }).fill(title);
      await page.getByRole('button', { name: 'Begin the quote' }).click();
      await page.waitForURL(/\/quotes\/[0-9a-f-]{36}/);
      await page.getByRole('heading', { name: title, level: 1 }).waitFor();
      await lines.getByRole('button', { name: /margin: .*working/ }).waitFor();
    },
    save: async () => {
      await page.getByRole('button', { name: 'Save the draft' }).click();
      await page.getByRole('button', { name: 'Save the draft' }).waitFor({ state: 'detached' });
    },
    send: async () => {
      await page.getByRole('button', { name: 'See it and send it' }).click();
      await page.getByRole('button', { name: /^Send it to/ }).click();
      const link = page.getByRole('link', { name: /\/offers\/[\w-]{43}$/ });
      await link.waitFor();
      return new URL((await link.getAttribute('href')) ?? '', address).href;
    },
    goToCell: async (row, header) => {
      const heads = await lines.getByRole('columnheader').allInnerTexts();
      const at = heads.findIndex((head) => head.startsWith(header));
      expect(at, `a column ${header} among ${heads.join(', ')}`).toBeGreaterThanOrEqual(0);
      await lines.locator(`[data-row="${row}"][data-column="${at}"]`).click();
    },
  };
}

/** The client's browser: another one, on a phone, signed in nowhere. */
export async function asClient(
  browser: Browser,
  link: string,
): Promise<{ page: Page; asked: string[]; answers: string[] }> {
  const context = await browser.newContext({ viewport: PHONE });
  const page = await context.newPage();
  const asked: string[] = [];
  const answers: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('response', async (response) => {
    if (response.url().includes('/api/')) answers.push(await response.text().catch(() => ''));
  });
  await page.goto(link);
  return { page, asked, answers };
}

/** The link that stands in the mail of a quote of the demo. */
export async function linkInMail(page: Page, address: string, subject: RegExp): Promise<string> {
  const { items } = await (await page.request.get(`${address}/api/mails?limit=100`)).json();
  const found = items.find((mail: { subject: string }) => subject.test(mail.subject));
  const mail = await (await page.request.get(`${address}/api/mails/${found?.id}`)).text();
  const path = /\/offers\/[\w-]{43}/.exec(mail)?.[0];
  expect(path).toBeDefined();
  return `${address}${path}`;
}
