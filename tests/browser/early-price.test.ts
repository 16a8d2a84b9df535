import { expect, it } from 'vitest';
import { runningProduct } from './running-product.ts';
import { signInAsDemo } from './sign-in-demo.ts';
import { violations } from './violations.ts';

const product = runningProduct();

it('answers an enquiry with a range from a past piece, and keeps it as it was given', async () => {
  const page = await product.browser.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signInAsDemo(page, product.address);
  await page.goto(`${product.address}/enquiries/new`);
  await page.getByRole('textbox', { name: 'Enquiry' }).fill('Longer bench for a gallery');
  await page.getByRole('textbox', { name: 'Or who asked' }).fill('Thora Winterbourne (invented)');
  await page.getByRole('button', { name: /^(Enter|Save)/ }).click();
  await page.getByRole('heading', { name: 'Longer bench for a gallery' }).waitFor();

  await page.getByRole('link', { name: 'Early price', exact: true }).click();
  await page.getByRole('combobox', { name: 'Past piece' }).fill('hall bench');
  await page.getByRole('option', { name: /Hall bench for the Ostrander-Pike stair hall/ }).click();
  const range = page.getByRole('status', { name: 'Early price' });
  const high = range.getByRole('button', { name: /^early price, high/ });
  await high.waitFor();
  const asThen = await high.textContent();
  const length = page.getByRole('textbox', { name: 'Overall length' });
  expect(await length.inputValue()).toContain('48');

  await length.fill('long');
  await page.getByText('The length cannot be "long".').waitFor();
  await length.fill('72');
  await high.waitFor();
  const longer = await high.textContent();
  expect(longer).not.toBe(asThen);

  await high.click();
  const working = page.getByRole('complementary', { name: 'Working' });
  await working.getByRole('heading', { name: 'early price, high' }).waitFor();
  await page.getByText('Own judgement, price policy, how each class grows').click();
  expect(await violations(page)).toEqual([]);
  await working.getByRole('button', { name: 'Close' }).click();
  await working.waitFor({ state: 'detached' });

  await page.getByRole('textbox', { name: 'Note' }).fill('told on the telephone');
  await page.getByRole('button', { name: 'Keep on the enquiry' }).click();
  const kept = page.getByRole('grid', { name: 'Early prices' });
  await kept.getByText('told on the telephone').waitFor();
  expect(await kept.textContent()).toContain(longer ?? '');
  expect(await violations(page)).toEqual([]);
  await kept.getByRole('link').first().click();
  await page.getByRole('heading', { name: 'Early price no. 1' }).waitFor();
  expect(await range.textContent()).toContain('not an offer');
  expect(await violations(page)).toEqual([]);
  expect(errors).toEqual([]);
});
