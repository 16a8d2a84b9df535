import { beforeEach, describe, expect, it } from 'vitest';
import { type DesignHands, designHands, handsOn } from './design-hands.ts';
import { runningProduct } from './running-product.ts';

const product = runningProduct();
let hands: DesignHands;

beforeEach(async () => {
  hands = await designHands(product.browser, product.address);
});

describe('a bill entered with the keyboard alone', () => {
  it('is typed, pasted, filled, undone and saved', async () => {
    const { page, errors, press, type, grid, tabTo, paste, column, enterDesign, note, waitForRevision } =
      hands;
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
    await waitForRevision(2);
    await page.reload();
    await grid('Parts').waitFor();
    expect(await column('Parts', 0)).toEqual(['Leg', 'Rail', 'Long rail', 'Slat']);
    expect(await column('Parts', 5)).toEqual(['450', '450', '450', '450']);
    expect(errors).toEqual([]);
  });

  it('says at the cell what cannot be read, keeps it, and is saved once it is mended', async () => {
    const { page, errors, press, type, grid, tabTo, column, enterDesign } = hands;
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

it('takes five hundred rows, draws those in view and goes to the last by key', async () => {
  const { page, errors, press, type, grid, tabTo, paste, enterDesign, waitForRevision } = hands;
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
  await waitForRevision(2);
  expect(errors).toEqual([]);
});

it('is filled in on a phone by tapping', async () => {
  await hands.enterDesign('PHONE-1');
  const address = hands.page.url();
  const context = await product.browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    storageState: await hands.page.context().storageState(),
  });
  const { page, press, type, grid, column, waitForRevision } = handsOn(
    await context.newPage(),
    product.address,
  );
  await page.goto(address);
  const cell = grid('Assemblies').locator('[data-row="0"][data-column="0"]');
  await cell.tap();
  await type('Frame');
  await press('Enter');
  expect(await column('Assemblies', 0)).toEqual(['Frame']);
  await page.getByRole('button', { name: 'Save as revision 2' }).tap();
  await waitForRevision(2);
});
