import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type RunningApplication, startApplication } from './application.ts';
import { launchBrowser } from './browser.ts';
import { signInAsDemo } from './sign-in-demo.ts';

let application: RunningApplication;
let browser: Browser;
let page: Page;
let errors: string[];

beforeAll(async () => {
  application = await startApplication({ SCANTLING_DEMO: 'on' });
});

// A browser for each test: the one from npm is a single process, which ends with its first page.
beforeEach(async () => {
  browser = await launchBrowser();
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  page = await context.newPage();
  errors = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, application.address);
});
afterEach(async () => {
  await browser?.close();
});
afterAll(async () => {
  await application?.stop();
});

const press = async (...keys: string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key);
};
const type = (text: string): Promise<void> => page.keyboard.type(text);
const grid = (name: string): Locator => page.getByRole('grid', { name, exact: true });

/** Tab, as somebody without a mouse, until it has the focus. */
async function tabTo(target: Locator): Promise<void> {
  for (let presses = 0; presses < 80; presses += 1) {
    await press('Tab');
    if (await target.evaluate((element) => element.contains(document.activeElement))) return;
  }
  throw new Error('Tab does not lead there');
}

async function paste(text: string): Promise<void> {
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  await press('Control+V');
}

/** The texts of a column, the empty row at the end left out. */
async function column(name: string, at: number): Promise<string[]> {
  const texts = await grid(name).locator(`tbody [data-column="${at}"]`).allInnerTexts();
  return texts.slice(0, -1);
}

async function enterDesign(code: string): Promise<void> {
  await page.goto(`${application.address}/designs/new`);
  const codeField = page.getByRole('textbox', { name: 'Code' });
  await codeField.waitFor();
  await tabTo(codeField);
  await type(code);
  await press('Tab');
  await type(`Stool ${code}`);
  await press('Enter');
  await grid('Parts').waitFor();
}

const note = () => page.getByRole('textbox', { name: /what and why/i });
const saved = (revision: number) => page.getByText(`is saved as revision ${revision}`).waitFor();

describe('a bill entered with the keyboard alone', () => {
  it('is typed, pasted, filled, undone and saved', async () => {
    await enterDesign('KEYS-1');
    await tabTo(grid('Assemblies'));
    await type('Frame');
    await press('Enter');
    expect(await column('Assemblies', 0)).toEqual(['Frame']);
    expect(await column('Assemblies', 1)).toEqual(['frame']);

    // Name, id, assembly, quantity, material, length: Tab from cell to cell, Enter back to where that began.
    await tabTo(grid('Parts'));
    await type('Leg');
    await press('Tab', 'Tab');
    await type('fr');
    await press('Tab');
    await type('4');
    await press('Tab');
    await type('walnut');
    await press('Tab');
    await type('45 cm');
    await press('Tab');
    await type('1 3/4"');
    await press('Tab');
    await type('44,45');
    await press('Enter');
    expect(await grid('Parts').locator('[data-row="0"]').allInnerTexts()).toEqual([
      'Leg',
      'leg',
      'frame',
      '4',
      'walnut',
      '450',
      '44.45',
      '44.45',
      'length',
      'all',
      '',
    ]);

    // A block from a spreadsheet, more rows than there are.
    await paste('Rail\t\tframe\t2\nLong rail\t\tframe\t2\nSlat\t\tframe\t9\n');
    expect(await column('Parts', 0)).toEqual(['Leg', 'Rail', 'Long rail', 'Slat']);
    expect(await column('Parts', 3)).toEqual(['4', '2', '2', '9']);
    expect(await column('Parts', 1)).toEqual(['leg', 'rail', 'long-rail', 'slat']);

    // Fills material and sizes down from the leg.
    await press('ArrowUp', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight');
    await press('Shift+ArrowDown', 'Shift+ArrowDown', 'Shift+ArrowDown');
    await press('Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowRight', 'Control+D');
    expect(await column('Parts', 4)).toEqual(['walnut', 'walnut', 'walnut', 'walnut']);
    expect(await column('Parts', 7)).toEqual(['44.45', '44.45', '44.45', '44.45']);
    await press('Control+Z');
    expect(await column('Parts', 4)).toEqual(['walnut', '', '', '']);
    await press('Control+Shift+Z');
    expect(await column('Parts', 4)).toEqual(['walnut', 'walnut', 'walnut', 'walnut']);

    await tabTo(grid('Operations'));
    await type('Turn the legs');
    await press('Tab', 'Tab', 'Tab', 'Tab');
    await type('1.5');
    await press('Tab', 'Tab');
    await type('own');
    await press('Enter');
    expect(await column('Operations', 6)).toEqual(['owner']);

    await tabTo(note());
    await type('First bill');
    await press('Tab', 'Enter');
    await saved(2);
    await page.reload();
    await grid('Parts').waitFor();
    expect(await column('Parts', 0)).toEqual(['Leg', 'Rail', 'Long rail', 'Slat']);
    expect(await column('Parts', 5)).toEqual(['450', '450', '450', '450']);
    expect(errors).toEqual([]);
  });

  it('says at the cell what cannot be read, keeps it, and is saved once it is mended', async () => {
    await enterDesign('KEYS-2');
    await tabTo(grid('Assemblies'));
    await type('Frame');
    await press('Tab', 'Tab');
    await type('two');
    await press('Enter', 'ArrowUp', 'ArrowRight', 'ArrowRight');
    const cell = grid('Assemblies').locator('[data-row="0"][data-column="2"]');
    expect(await cell.getAttribute('aria-invalid')).toBe('true');
    const message = await cell.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${message}"]`).textContent()).toContain('"two" is no whole number.');
    expect(await page.getByRole('button', { name: 'Save as revision 2' }).isDisabled()).toBe(true);
    await press('F2', 'Control+A');
    await type('2');
    await press('Enter');
    expect(await cell.getAttribute('aria-invalid')).toBeNull();

    // Cut, and pasted one row further down; a copied cell is what a spreadsheet would read.
    await press('ArrowUp', 'Home', 'Shift+End', 'Control+X');
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('Frame\tframe\t2');
    expect(await column('Assemblies', 0)).toEqual(['']);
    await press('Control+Z', 'Alt+Shift+ArrowDown');
    expect(await column('Assemblies', 1)).toEqual(['frame', 'frame-2']);
    await press('Alt+ArrowUp');
    expect(await column('Assemblies', 1)).toEqual(['frame-2', 'frame']);
    await press('Control+Delete');
    expect(await column('Assemblies', 1)).toEqual(['frame']);
    expect(errors).toEqual([]);
  });
});

describe('changes that are not saved', () => {
  it('are asked for before leaving and come back after a reload', async () => {
    await enterDesign('KEPT-1');
    const asked: string[] = [];
    let isLeaving = false;
    page.on('dialog', (dialog) => {
      asked.push(dialog.type());
      void (isLeaving || dialog.type() === 'beforeunload' ? dialog.accept() : dialog.dismiss());
    });
    await tabTo(grid('Assemblies'));
    await type('Drawer');
    await press('Enter');
    await page.getByRole('link', { name: 'Designs', exact: true }).last().click();
    expect(asked).toEqual(['confirm']);
    expect(await column('Assemblies', 0)).toEqual(['Drawer']);
    await page.reload();
    await page.getByText('These changes were made before and not saved.').waitFor();
    expect(await column('Assemblies', 0)).toEqual(['Drawer']);
    await page.getByRole('button', { name: 'Drop changes' }).click();
    await note().waitFor({ state: 'detached' });
    expect(await column('Assemblies', 0)).toEqual([]);
    isLeaving = true;
  });

  it('are shown beside what somebody else saved meanwhile', async () => {
    await enterDesign('CLASH-1');
    await tabTo(grid('Assemblies'));
    await type('Drawer');
    await press('Enter');
    // Somebody else, in another window.
    await page.evaluate(async () => {
      const id = location.pathname.split('/').at(-1);
      const read = await fetch(`/api/designs/${id}`);
      const { code, name, description, unitSystem, bill } = await read.json();
      const assemblies = [{ id: 'door', name: 'Door', quantity: 1 }];
      const answer = await fetch(`/api/designs/${id}`, {
        method: 'PUT',
        headers: { 'content-type': 'application/json', 'if-match': read.headers.get('etag') ?? '' },
        body: JSON.stringify({
          code,
          name,
          description,
          unitSystem,
          bill: { ...bill, assemblies },
          note: '',
        }),
      });
      if (!answer.ok) throw new Error(await answer.text());
    });
    await page.getByRole('button', { name: /Save as revision/ }).click();
    const clash = page.getByRole('alert').filter({ hasText: 'Somebody changed this meanwhile' });
    await clash.getByRole('row', { name: /Assemblies, drawer/ }).waitFor();
    await clash.getByRole('row', { name: /Assemblies, door/ }).waitFor();
    await clash.getByRole('button', { name: /Keep mine/ }).click();
    await page.getByRole('button', { name: 'Save as revision 3' }).click();
    await saved(3);
    expect(await column('Assemblies', 0)).toEqual(['Drawer']);
  });
});

it('takes five hundred rows, draws those in view and goes to the last by key', async () => {
  await enterDesign('MANY-1');
  await tabTo(grid('Parts'));
  const rows = Array.from({ length: 500 }, (_, at) => `Slat ${at + 1}\t\t\t1\twalnut\t400\t40\t12`);
  await paste(rows.join('\n'));
  const parts = grid('Parts');
  await parts.getByText('Slat 1', { exact: true }).waitFor();
  expect(await parts.getAttribute('aria-rowcount')).toBe('502');
  expect(await parts.locator('tbody tr').count()).toBeLessThan(100);
  await press('Control+End', 'Home', 'ArrowUp');
  await parts.getByText('Slat 500', { exact: true }).waitFor();
  await type('Last slat');
  await press('Enter');
  await parts.getByText('Last slat', { exact: true }).waitFor();
  await page.getByRole('button', { name: 'Save as revision 2' }).click();
  await saved(2);
  expect(errors).toEqual([]);
});

it('is filled in on a phone by tapping', async () => {
  await enterDesign('PHONE-1');
  const address = page.url();
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    storageState: await page.context().storageState(),
  });
  page = await context.newPage();
  await page.goto(address);
  const cell = grid('Assemblies').locator('[data-row="0"][data-column="0"]');
  await cell.tap();
  await type('Frame');
  await press('Enter');
  expect(await column('Assemblies', 0)).toEqual(['Frame']);
  await page.getByRole('button', { name: 'Save as revision 2' }).tap();
  await saved(2);
});
