import { beforeEach, describe, expect, it } from 'vitest';
import { type QuoteHands, quoteHands } from './quote-hands.ts';
import { runningProduct } from './running-product.ts';
import { violations } from './violations.ts';

/** Figures come from the server, which a busy machine keeps waiting. */
const PATIENT = { timeout: 20_000 };

const product = runningProduct();
let hands: QuoteHands;

beforeEach(async () => {
  hands = await quoteHands(product.browser, product.address);
});

const NAMES = 0;

describe('the lines of a quote', () => {
  it('are typed, pasted out of a spreadsheet, filled, undone and saved by keys alone', async () => {
    const { page, errors, begin, press, type, paste, grid, column, tabTo, goToCell, save } = hands;
    await begin('Bench, by keys');
    const lines = grid('Lines');
    await tabTo(lines);
    await press('Control+End', 'Home');
    await paste('Cushion\t2\tpiece\t85,50\nPutting up\t3.5\th\t62\nOiling\t1\t\tlots');
    expect((await column('Lines', NAMES)).slice(1)).toEqual(['Cushion', 'Putting up', 'Oiling']);
    expect((await column('Lines', 3)).slice(1)).toEqual(['85.50', '62', 'lots']);

    // What cannot be read is told at its cell, kept, and holds saving up until it is mended.
    const price = lines.locator('[data-row="3"][data-column="3"]');
    expect(await price.getAttribute('aria-invalid')).toBe('true');
    expect(await page.getByRole('button', { name: 'Save the draft' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: /1 to mend, go to/ }).click();
    await type('45');
    await press('Enter');
    await expect.poll(() => price.getAttribute('aria-invalid'), PATIENT).toBeNull();

    await goToCell(1, 'Unit');
    await press('Shift+ArrowDown', 'Shift+ArrowDown', 'Control+D');
    expect((await column('Lines', 2)).slice(1)).toEqual(['piece', 'piece', 'piece']);
    await press('Control+Z');
    expect((await column('Lines', 2)).slice(1)).toEqual(['piece', 'h', '']);

    // A line that is made from a cost sheet has its price and cost from there.
    await goToCell(3, 'Made from');
    await type('step stool');
    await press('Enter');
    await lines
      .getByRole('row', { name: /Oiling/ })
      .getByRole('button', { name: /margin: .*working/ })
      .waitFor();
    await lines
      .locator('[data-row="3"]')
      .getByRole('button', { name: /working/ })
      .first()
      .press('Enter');
    await page.getByRole('complementary', { name: 'Working' }).waitFor();
    await press('Escape');
    await save();
    await page.reload();
    await lines.getByText('Putting up').waitFor();
    expect((await column('Lines', NAMES)).slice(1)).toEqual(['Cushion', 'Putting up', 'Oiling']);
    expect(await violations(page)).toEqual([]);
    expect(errors).toEqual([]);
  });

  it('are alternates of which the client takes one, with words and pictures beside', async () => {
    const { page, begin, press, type, goToCell, grid, save } = hands;
    await begin('Bench, oak or walnut');
    await goToCell(1, 'Line');
    await type('The same in walnut');
    await press('Tab', 'Tab', 'Tab');
    await type('2400');
    await press('Enter');
    for (const row of [0, 1]) {
      await goToCell(row, 'Taken');
      await type('one of');
      await press('Enter');
      await goToCell(row, 'Group');
      await type('Wood');
      await press('Enter');
    }
    await goToCell(0, 'Standard');
    await press('Space');
    const total = page
      .getByRole('region', { name: 'What it comes to' })
      .getByRole('button', { name: /^total: / });
    await total.waitFor();
    const inOak = await total.textContent();
    await page.getByRole('checkbox', { name: 'The same in walnut' }).press('Space');
    await expect.poll(() => total.textContent(), PATIENT).not.toBe(inOak);

    await grid('Lines')
      .getByRole('button', { name: /Words and pictures of The same in walnut/ })
      .click();
    const beside = page.getByRole('form', { name: /Words and pictures of The same in walnut/ });
    await beside.getByRole('textbox', { name: 'More about it' }).fill('Oiled, from one log.');
    await beside.getByRole('button', { name: 'Close' }).click();
    await grid('Lines')
      .getByRole('button', { name: /Oiled, from one log/ })
      .waitFor();
    await save();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'See it and send it' }).click();
    await page.getByText('Oiled, from one log.').last().waitFor();
  });

  it('are dragged by their handle and moved by keys', async () => {
    const { page, begin, press, goToCell, grid, column } = hands;
    await begin('Bench, in order');
    await page.getByRole('button', { name: 'Add delivery' }).click();
    const [bench = '', delivery = ''] = await column('Lines', NAMES);
    expect(delivery).toBe('Delivery');
    const handles = grid('Lines').locator('.row-handle');
    await handles.nth(1).dragTo(handles.nth(0));
    expect(await column('Lines', NAMES)).toEqual([delivery, bench]);
    await goToCell(0, 'Line');
    await press('Alt+ArrowDown');
    expect(await column('Lines', NAMES)).toEqual([bench, delivery]);
    await press('Control+Z');
    expect(await column('Lines', NAMES)).toEqual([delivery, bench]);
  });

  it('are filled in on a phone by tapping', async () => {
    const { page: wide, begin } = hands;
    await begin('Bench, on a phone');
    const context = await product.browser.newContext({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
      storageState: await wide.context().storageState(),
    });
    const page = await context.newPage();
    await page.goto(wide.url());
    const lines = page.getByRole('grid', { name: 'Lines', exact: true });
    await lines.locator('[data-row="1"][data-column="0"]').tap();
    await page.keyboard.type('Cushion');
    await page.keyboard.press('Enter');
    await lines.getByText('Cushion').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});

describe('changes of a draft that are not saved', () => {
  it('come back after a reload, until they are dropped', async () => {
    const { page, begin, goToCell, press, type, column } = hands;
    await begin('Bench, unsaved');
    await page.getByRole('button', { name: 'Add delivery' }).click();
    await goToCell(1, 'Net price');
    await type('a lot');
    await press('Enter');
    page.on('dialog', (dialog) => void dialog.accept());
    await page.reload();
    await page.getByText('These changes were made before and not saved.').waitFor();
    expect((await column('Lines', 3)).at(-1)).toBe('a lot');
    await page.getByRole('button', { name: 'Drop changes' }).click();
    await expect.poll(async () => (await column('Lines', NAMES)).length, PATIENT).toBe(1);
  });

  it('are shown beside what somebody else saved meanwhile, and lose nothing', async () => {
    const { page, begin, goToCell, press, type, column, save } = hands;
    await begin('Bench, written by two');
    const other = await page.context().newPage();
    await other.goto(page.url());
    await other.getByRole('button', { name: 'Add delivery' }).click();
    const theirs = other.getByRole('grid', { name: 'Lines', exact: true });
    await theirs.locator('[data-row="1"][data-column="3"]').click();
    await other.keyboard.type('120');
    await other.keyboard.press('Enter');
    await other.getByRole('button', { name: 'Save the draft' }).click();
    await other.getByRole('button', { name: 'Save the draft' }).waitFor({ state: 'detached' });
    await other.close();

    await goToCell(1, 'Line');
    await type('Cushion');
    await press('Tab', 'Tab', 'Tab');
    await type('85.50');
    await press('Enter');
    await page.getByRole('button', { name: 'Save the draft' }).click();
    const clash = page.getByRole('alert').filter({ hasText: 'Somebody changed this meanwhile' });
    await clash.getByRole('row', { name: /Line "Delivery" no such line .*Delivery/ }).waitFor();
    await clash.getByRole('row', { name: /Line "Cushion" .*Cushion.* no such line/ }).waitFor();
    expect(await violations(page)).toEqual([]);
    await clash.getByRole('button', { name: /Keep mine/ }).click();
    await save();
    expect((await column('Lines', NAMES)).at(-1)).toBe('Cushion');
  });
});
