import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { type RunningApplication, startApplication } from './application.ts';
import { launchBrowser } from './browser.ts';
import { type DesignHands, designHands } from './design-hands.ts';
import { violations } from './violations.ts';

const DRAWINGS = join(fileURLToPath(new URL('../../', import.meta.url)), 'prisma', 'demo', 'pictures');

const folder = mkdtempSync(join(tmpdir(), 'scantling-pictures-'));

let application: RunningApplication;
let browser: Browser;
let hands: DesignHands;

beforeAll(async () => {
  application = await startApplication({ SCANTLING_DEMO: 'on' });
});

// A browser for each test: the one from npm is a single process, which ends with its first page.
beforeEach(async () => {
  browser = await launchBrowser();
  hands = await designHands(browser, application.address);
});
afterEach(async () => {
  await browser?.close();
});
afterAll(async () => {
  await application?.stop();
  rmSync(folder, { recursive: true, force: true });
});

const section = (page: Page) => page.getByRole('region', { name: 'Pictures' });
const inOrder = (page: Page) =>
  section(page)
    .getByRole('list', { name: 'Pictures' })
    .getByRole('img')
    .evaluateAll((images) => images.map((image) => image.getAttribute('alt')));

/** Files taken from the chooser that the button opens. */
async function choose(page: Page, files: readonly string[]): Promise<void> {
  const opened = page.waitForEvent('filechooser');
  await section(page).getByRole('button', { name: 'Choose files' }).click();
  await (await opened).setFiles([...files]);
}

/** Describes the picture that waits under its file's name, and adds it. */
async function addWith(page: Page, fileName: string, words: string): Promise<void> {
  const waiting = section(page).getByRole('form', { name: `New picture ${fileName}` });
  await waiting.getByRole('textbox', { name: 'What it shows' }).fill(words);
  await waiting.getByRole('button', { name: 'Add the picture' }).click();
  await waiting.waitFor({ state: 'detached' });
}

it('puts pictures on a design, in order by keyboard, and shows the cover in the list', async () => {
  const { page, press, enterDesign, errors } = hands;
  await enterDesign('PICTURED-1');
  await choose(
    page,
    ['tool-chest-front.png', 'wall-shelf-front.png'].map((name) => join(DRAWINGS, name)),
  );
  // Without words none is added.
  const first = section(page).getByRole('form', { name: 'New picture tool-chest-front.png' });
  await first.getByRole('button', { name: 'Add the picture' }).click();
  await first.getByText('What it shows is missing.').waitFor();
  await addWith(page, 'tool-chest-front.png', 'Stool from the front');
  // What waits for its words is still there after the page was loaded anew.
  await page.reload();
  await addWith(page, 'wall-shelf-front.png', 'Stool from the side');
  expect(await inOrder(page)).toEqual(['Stool from the front', 'Stool from the side']);

  const wrong = ['plan.heic', 'torn.png', 'huge.jpg'].map((name) => join(folder, name));
  for (const path of wrong) writeFileSync(path, 'x');
  truncateSync(join(folder, 'huge.jpg'), 26 * 1024 * 1024);
  await choose(page, wrong);
  await section(page).getByText('"plan.heic" is of another kind.').waitFor();
  await section(page).getByText('"huge.jpg" is too large.').waitFor();
  await section(page).getByText('"torn.png" is no picture that can be read.').waitFor();

  // A copied drawing, pasted where files are dropped.
  const drawing = readFileSync(join(DRAWINGS, 'step-stool-end.png')).toString('base64');
  await page.evaluate(async (bytes) => {
    const copied = new Blob([Uint8Array.from(atob(bytes), (one) => one.charCodeAt(0))], {
      type: 'image/png',
    });
    await navigator.clipboard.write([new ClipboardItem({ 'image/png': copied })]);
  }, drawing);
  await section(page).getByText('To paste a copied one').click();
  await press('Control+V');
  await addWith(page, 'image.png', 'Stool from its end');
  expect(await inOrder(page)).toEqual(['Stool from the front', 'Stool from the side', 'Stool from its end']);

  const end = section(page).getByRole('button', { name: 'Stool from its end' });
  await end.focus();
  await press('Alt+ArrowLeft', 'Alt+ArrowLeft');
  await section(page).getByText('Stool from its end is now picture 1 of 3').waitFor({ state: 'attached' });
  expect(await end.evaluate((element) => element === document.activeElement)).toBe(true);
  await press('Enter');
  const open = section(page).getByRole('form', { name: 'Picture 1 of 3' });
  await open.getByRole('textbox', { name: 'Caption' }).fill('Splayed sides');
  await open.getByRole('button', { name: 'Save the words' }).click();
  await open.getByText('The words are saved.').waitFor();
  await open.getByRole('button', { name: 'Make it the cover' }).click();
  await section(page).getByText('Cover, Splayed sides').waitFor();
  expect(await violations(page)).toEqual([]);

  await page.reload();
  await section(page).getByText('Cover, Splayed sides').waitFor();
  expect(await inOrder(page)).toEqual(['Stool from its end', 'Stool from the front', 'Stool from the side']);
  await page.goto(`${application.address}/designs`);
  const row = page.getByRole('row', { name: /Stool PICTURED-1/ });
  await row.getByRole('img', { name: 'Stool from its end' }).waitFor();
  expect(await violations(page)).toEqual([]);
  expect(errors).toEqual([]);
});

it('lets a quote take the pictures of its design, with their words', async () => {
  const { page, errors } = hands;
  await page.goto(`${application.address}/cost-sheets`);
  await page.getByRole('link', { name: 'Hall bench for the Ostrander-Pike stair hall' }).click();
  await page.getByRole('link', { name: 'Quote this piece' }).click();
  await page.getByRole('heading', { name: 'New quote', level: 1 }).waitFor();
  await page.getByRole('button', { name: 'Begin the quote' }).click();
  await page.waitForURL(/\/quotes\/[0-9a-f-]{36}/);
  const pictures = page.getByRole('region', { name: 'Terms and pictures' });
  const offered = pictures.getByRole('group', { name: 'Take one of Hall bench on turned legs' });
  await offered.getByRole('button').first().waitFor();
  expect(await offered.getByRole('button').count()).toBe(3);
  await offered.getByRole('button', { name: /from its end/ }).click();
  expect(await offered.getByRole('button').count()).toBe(2);
  const words = pictures.getByRole('textbox', { name: 'What it shows' });
  expect(await words.inputValue()).toMatch(/^Line drawing of the hall bench from its end/);
  await page.getByRole('button', { name: 'Save the draft' }).click();
  await page.getByText('The draft is saved.').waitFor();
  await page.reload();
  await words.waitFor();
  expect(await words.inputValue()).toMatch(/^Line drawing of the hall bench from its end/);
  expect(errors).toEqual([]);
});

it('keeps what a client sent with their enquiry, dropped as a file', async () => {
  const { page, errors } = hands;
  await page.goto(`${application.address}/enquiries`);
  await page.getByRole('link', { name: 'Dining table for ten' }).click();
  await section(page).getByRole('button', { name: 'Choose files' }).waitFor();
  // A drag that comes from outside the browser, as from a folder, to where the place stands once all is drawn.
  const devtools = await page.context().newCDPSession(page);
  const data = { items: [], files: [join(DRAWINGS, 'study-slope.png')], dragOperationsMask: 1 };
  const place = section(page).getByText('Photographs and drawings');
  const drag = async (...types: ('dragEnter' | 'dragOver' | 'drop')[]): Promise<void> => {
    await place.scrollIntoViewIfNeeded();
    const { x = 0, y = 0 } = (await place.boundingBox()) ?? {};
    for (const type of types)
      await devtools.send('Input.dispatchDragEvent', { type, x: x + 5, y: y + 5, data });
  };
  await expect
    .poll(async () => {
      await drag('dragEnter', 'dragOver');
      return section(page).locator('[data-drop-target]').count();
    })
    .toBe(1);
  await drag('drop');
  await addWith(page, 'study-slope.png', 'The room under the slope');
  await page.goto(`${application.address}/enquiries`);
  const row = page.getByRole('row', { name: /Dining table for ten/ });
  await row.getByRole('img', { name: 'The room under the slope' }).waitFor();
  expect(errors).toEqual([]);
});
