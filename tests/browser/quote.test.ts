import { beforeEach, describe, expect, it } from 'vitest';
import { asClient, linkInMail, PHONE, type QuoteHands, quoteHands } from './quote-hands.ts';
import { runningProduct } from './running-product.ts';
import { violations } from './violations.ts';

/** Figures come from the server, which a busy machine keeps waiting. */
const PATIENT = { timeout: 20_000 };

const product = runningProduct();
let hands: QuoteHands;

beforeEach(async () => {
  hands = await quoteHands(product.browser, product.address);
});

it('a piece goes from its cost sheet to an offer that the client accepts with an option', async () => {
  const { page, errors, begin, goToCell, type, press, save, send } = hands;
  await begin('Bench with a cushion');
  await goToCell(1, 'Line');
  await type('Cushion, wool felt');
  await press('Tab', 'Tab', 'Tab');
  await type('85.50');
  await press('Enter');
  await goToCell(1, 'Taken');
  await type('opt');
  await press('Enter');
  await goToCell(1, 'Cost of line');
  await type('41.25');
  await press('Enter');
  const reckoning = page.getByRole('region', { name: 'What it comes to' });
  const total = reckoning.getByRole('button', { name: /^total: / });
  const tried = page.getByRole('checkbox', { name: 'Cushion, wool felt' });
  await hands
    .grid('Lines')
    .getByRole('button', { name: /margin: 51\.8/ })
    .waitFor();
  const without = (await total.textContent()) ?? '';
  await tried.press('Space');
  await expect.poll(() => total.textContent(), PATIENT).not.toBe(without);
  await save();
  expect(await violations(page)).toEqual([]);
  const link = await send();

  const { page: phone, asked, answers } = await asClient(product.browser, link);
  await phone.getByRole('heading', { name: 'Bench with a cushion', level: 1 }).waitFor();
  expect(await phone.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
  expect(await violations(phone)).toEqual([]);
  const running = phone.getByRole('status').filter({ hasText: 'As chosen, with tax' });
  expect(await running.textContent()).toContain(without);
  await phone.getByRole('checkbox', { name: /Cushion, wool felt/ }).check();
  await expect.poll(() => running.textContent(), PATIENT).not.toContain(without);
  const chosenTotal = (await running.locator('strong').textContent()) ?? '';
  await phone.getByRole('button', { name: `Accept for ${chosenTotal}` }).click();
  await phone.getByText('Write who accepts, first and last name.').waitFor();
  await phone.getByRole('textbox', { name: 'Your name' }).fill('Ottoline Marsh (invented)');
  await phone.getByRole('button', { name: `Accept for ${chosenTotal}` }).click();
  await phone.getByRole('heading', { name: 'Accepted' }).waitFor();
  await phone.getByText('Ottoline Marsh (invented) accepted this offer', { exact: false }).waitFor();
  expect(await violations(phone)).toEqual([]);

  expect(asked.filter((url) => !url.startsWith(product.address))).toEqual([]);
  expect(answers.join('\n')).not.toMatch(/41\.25|costSheetId|"cost"|margin|hourlyEarnings/i);

  await page.reload();
  await page.getByText('Accepted by Ottoline Marsh (invented)', { exact: false }).waitFor();
  const agreed = page.getByRole('region', { name: 'Agreed in all' });
  expect(await agreed.textContent()).toContain(chosenTotal);
  expect(await violations(page)).toEqual([]);
  await page.goto(`${product.address}/mail`);
  await page
    .getByRole('link', { name: /Bench with a cushion/ })
    .first()
    .waitFor();
  expect(errors).toEqual([]);
});

describe('a link that leads to no open offer', () => {
  it('says that it was replaced, or that there is none', async () => {
    const { page, begin, send } = hands;
    await begin('Bench, first thoughts');
    const first = await send();
    await page.getByRole('button', { name: 'Revise' }).click();
    await page.getByRole('button', { name: 'See it and send it' }).waitFor();
    const second = await send();
    expect(second).not.toBe(first);

    const { page: phone } = await asClient(product.browser, first);
    await phone.getByRole('heading', { name: 'Replaced by a newer offer' }).waitFor();
    expect(await phone.getByRole('button', { name: /Accept/ }).count()).toBe(0);
    await phone.goto(second);
    await phone.getByRole('heading', { name: 'Bench, first thoughts', level: 1 }).waitFor();
    await phone.goto(`${product.address}/offers/${'x'.repeat(43)}`);
    await phone.getByRole('heading', { name: 'No offer stands behind this link' }).waitFor();
    expect(await violations(phone)).toEqual([]);
  });

  it('says that it has expired, and can still be read but not accepted', async () => {
    const link = await linkInMail(hands.page, product.address, /Step stool that does not tip/);
    const { page: phone } = await asClient(product.browser, link);
    await phone.getByRole('heading', { name: 'Expired' }).waitFor();
    await phone.getByRole('heading', { name: 'Step stool that does not tip', level: 1 }).waitFor();
    expect(await phone.getByRole('button', { name: /Accept|Decline/ }).count()).toBe(0);
    expect(await violations(phone)).toEqual([]);
    expect(await phone.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
  });

  it('says that it was withdrawn, once the workshop has done so', async () => {
    const { page, begin, send } = hands;
    await begin('Bench, thought better of');
    const link = await send();
    await page.getByRole('button', { name: 'Withdraw' }).click();
    const question = page.getByRole('alertdialog').or(page.getByRole('dialog'));
    await question.getByRole('button', { name: 'Withdraw' }).click();
    await page.getByText('Withdrawn', { exact: true }).first().waitFor();
    const { page: phone } = await asClient(product.browser, link);
    await phone.getByRole('heading', { name: 'Withdrawn' }).waitFor();
    expect(await phone.getByRole('button', { name: /Accept|Decline/ }).count()).toBe(0);
    expect(await violations(phone)).toEqual([]);
  });

  it('says that it was declined, with what the client said', async () => {
    const { begin, send, page } = hands;
    await begin('Bench that is too long');
    const link = await send();
    const { page: phone } = await asClient(product.browser, link);
    await phone.getByRole('button', { name: 'Decline instead' }).click();
    await phone.getByRole('textbox', { name: /Why, if you wish to say/ }).fill('It must fit the niche');
    await phone.getByRole('button', { name: 'Decline the offer' }).click();
    await phone.getByRole('heading', { name: 'Declined' }).waitFor();
    expect(await violations(phone)).toEqual([]);
    await page.reload();
    await page.getByText('“It must fit the niche”').waitFor();
  });
});

it('a yes by phone is written down with what was chosen, and an addition to it is accepted by the client', async () => {
  const { page, errors, begin, goToCell, type, press, save, send, column } = hands;
  await begin('Bench, agreed by phone');
  await send();
  await page.getByRole('button', { name: 'The client accepted' }).click();
  await page.getByRole('textbox', { name: 'Who accepted' }).fill('Ottoline Marsh (invented)');
  await page.getByRole('textbox', { name: 'How' }).fill('by phone, in the morning');
  await page.getByRole('button', { name: 'Write down that it is accepted' }).click();
  await page.getByText('by phone, in the morning, as written down here', { exact: false }).waitFor();
  const agreed = page.getByRole('region', { name: 'Agreed in all' });
  const before = await agreed.textContent();

  await page.getByRole('button', { name: 'Make an addition' }).click();
  await page.getByText('Add a line first.').waitFor();
  expect(await column('Lines', 0)).toEqual([]);
  const title = page.getByRole('textbox', { name: 'Title' });
  expect(await title.inputValue()).toBe('Addition to Bench, agreed by phone');
  await title.fill('A drawer for gloves');
  await goToCell(0, 'Line');
  await type('Glove drawer');
  await press('Tab', 'Tab', 'Tab');
  await type('140');
  await press('Enter');
  await page
    .getByRole('button', { name: /^total: .*working/ })
    .first()
    .waitFor();
  await save();
  const link = await send();
  const { page: phone } = await asClient(product.browser, link);
  await phone.getByRole('heading', { name: 'A drawer for gloves', level: 1 }).waitFor();
  await phone.getByText('Glove drawer').first().waitFor();
  await phone.getByRole('textbox', { name: 'Your name' }).fill('Ottoline Marsh (invented)');
  await phone.getByRole('button', { name: /^Accept for/ }).click();
  await phone.getByRole('heading', { name: 'Accepted' }).waitFor();

  await page.reload();
  await agreed.getByText(/^Addition .*-A1, A drawer for gloves/).waitFor();
  const revisions = page.getByRole('region', { name: 'Revisions and additions' });
  await revisions.getByRole('link', { name: /^Revision 1/ }).click();
  await page.getByRole('heading', { name: 'Bench, agreed by phone', level: 1 }).waitFor();
  expect(await agreed.textContent()).not.toBe(before);
  expect(errors).toEqual([]);
});
