import { beforeEach, expect, it } from 'vitest';
import { type DesignHands, designHands } from './design-hands.ts';
import { runningProduct } from './running-product.ts';

const product = runningProduct();
let hands: DesignHands;

beforeEach(async () => {
  hands = await designHands(product.browser, product.address);
});

it('gives a design a parameter and a variant by keyboard, and the cost sheet offers them', async () => {
  const { page, errors, press, type, grid, tabTo, column, enterDesign, note, waitForRevision } = hands;
  await enterDesign('STRETCH-1');

  // Name, id made of it, kind, as drawn, least, greatest.
  await tabTo(grid('Parameters'));
  await type('Overall length');
  await press('Tab', 'Tab', 'Tab');
  await type('120 cm');
  await press('Tab');
  await type('600');
  await press('Tab');
  await type('2000');
  await press('Enter');
  expect(await grid('Parameters').locator('[data-row="0"]').allInnerTexts()).toEqual([
    'Overall length',
    'overall_length',
    'length',
    '1200',
    '600',
    '2000',
    '',
  ]);

  await tabTo(grid('Parts'));
  await type('Rail');
  await press('Tab', 'Tab', 'Tab');
  await type('2');
  await press('Tab');
  await type('walnut');
  await press('Tab');
  await type('= overall_length - 2 * 40');
  await press('Tab');
  await type('60');
  await press('Tab');
  await type('19');
  await press('Enter');
  const length = grid('Parts').locator('[data-row="0"][data-column="5"]');
  await length.getByText('1120', { exact: true }).waitFor();
  expect(await length.textContent()).toContain('= overall_length - 2 * 40');

  // Another id is written into the formula with it.
  await page.keyboard.press('Shift+Tab');
  await grid('Parameters').locator('[data-row="0"][data-column="1"]').click();
  await type('over_all');
  await press('Enter');
  await length.getByText('= over_all - 2 * 40').waitFor();
  await length.getByText('1120', { exact: true }).waitFor();

  await tabTo(grid('Variants'));
  await type('Long');
  await press('Tab');
  await type('135 cm');
  await press('Enter');
  expect(await column('Variants', 1)).toEqual(['1350']);

  await page.getByRole('button', { name: /Sizes shown below/ }).press('ArrowDown');
  await page.getByRole('option', { name: 'Long' }).press('Enter');
  await length.getByText('1270', { exact: true }).waitFor();

  await tabTo(note());
  await type('It stretches');
  await press('Tab', 'Enter');
  await waitForRevision(2);
  await page.reload();
  await grid('Variants').waitFor();
  expect(await column('Variants', 0)).toEqual(['Long']);

  await page.getByRole('link', { name: 'Make a cost sheet' }).press('Enter');
  const title = page.getByRole('textbox', { name: 'Title' });
  await title.waitFor();
  await tabTo(title);
  await type('Rail that stretches');
  await press('Enter');
  const made = page.getByRole('region', { name: 'What is made' });
  await made.waitFor();
  await made.getByRole('button', { name: /Variant/ }).press('ArrowDown');
  await page.getByRole('option', { name: 'Long' }).press('Enter');
  await made.getByText('here +150 mm').waitFor();
  expect(errors).toEqual([]);
});

it('says at the cell of a variant what its parameter does not take', async () => {
  const { page, errors, press, type, grid, tabTo, enterDesign } = hands;
  await enterDesign('STRETCH-2');
  await tabTo(grid('Parameters'));
  await type('Length');
  await press('Tab', 'Tab', 'Tab');
  await type('1200');
  await press('Tab', 'Tab');
  await type('2000');
  await press('Enter');
  await tabTo(grid('Variants'));
  await type('Endless');
  await press('Tab');
  await type('3000');
  await press('Enter');
  const cell = grid('Variants').locator('[data-row="0"][data-column="1"][aria-invalid=true]');
  await cell.waitFor();
  const message = await cell.getAttribute('aria-describedby');
  expect(await page.locator(`[id="${message}"]`).textContent()).toContain(
    '3000 is more than the greatest, 2000.',
  );
  expect(await page.getByRole('button', { name: 'Save as revision 2' }).isDisabled()).toBe(true);
  expect(errors).toEqual([]);
});
