import type { Browser, Locator, Page } from 'playwright-core';
import { signInAsDemo } from './sign-in-demo.ts';

/** What somebody does at a sheet with grids, on the page they have open. */
export interface GridHands {
  readonly page: Page;
  /** Errors that no code caught on the page. */
  readonly errors: readonly string[];
  readonly press: (...keys: string[]) => Promise<void>;
  readonly type: (text: string) => Promise<void>;
  readonly grid: (name: string) => Locator;
  /** Tab, as somebody without a mouse, until it has the focus. */
  readonly tabTo: (target: Locator) => Promise<void>;
  /** Through the clipboard, as from a spreadsheet. */
  readonly paste: (text: string) => Promise<void>;
  /** The texts of a column, the empty row at the end left out. */
  readonly column: (name: string, at: number) => Promise<string[]>;
}

/** The same at the sheet of a design. */
export interface DesignHands extends GridHands {
  /** A new design without a bill, entered by keys. */
  readonly enterDesign: (code: string) => Promise<void>;
  readonly note: () => Locator;
  readonly waitForRevision: (revision: number) => Promise<void>;
}

export function gridHandsOn(page: Page): GridHands {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  const press = async (...keys: string[]): Promise<void> => {
    for (const key of keys) await page.keyboard.press(key);
  };
  const type = (text: string): Promise<void> => page.keyboard.type(text);
  const grid = (name: string): Locator => page.getByRole('grid', { name, exact: true });
  const tabTo = async (target: Locator): Promise<void> => {
    for (let presses = 0; presses < 80; presses += 1) {
      await press('Tab');
      if (await target.evaluate((element) => element.contains(document.activeElement))) return;
    }
    throw new Error('Tab does not lead there');
  };
  return {
    page,
    errors,
    press,
    type,
    grid,
    tabTo,
    paste: async (text) => {
      await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
      await press('Control+V');
    },
    column: async (name, at) => {
      const texts = await grid(name).locator(`tbody [data-column="${at}"]`).allInnerTexts();
      return texts.slice(0, -1);
    },
  };
}

export function handsOn(page: Page, address: string): DesignHands {
  const hands = gridHandsOn(page);
  const { press, type, grid, tabTo } = hands;
  return {
    ...hands,
    enterDesign: async (code) => {
      await page.goto(`${address}/designs/new`);
      const codeField = page.getByRole('textbox', { name: 'Code' });
      await codeField.waitFor();
      await tabTo(codeField);
      await type(code);
      await press('Tab');
      await type(`Stool ${code}`);
      await press('Enter');
      await grid('Parts').waitFor();
    },
    note: () => page.getByRole('textbox', { name: /what and why/i }),
    waitForRevision: (revision) => page.getByText(`is saved as revision ${revision}`).waitFor(),
  };
}

/** A page signed in as the demo, in a wide window that may use the clipboard. */
export async function demoPage(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const page = await context.newPage();
  await signInAsDemo(page, address);
  return page;
}

export async function designHands(browser: Browser, address: string): Promise<DesignHands> {
  return handsOn(await demoPage(browser, address), address);
}
