import { beforeEach, expect, it } from 'vitest';
import { type DesignHands, designHands } from './design-hands.ts';
import { runningProduct } from './running-product.ts';

const product = runningProduct();
let hands: DesignHands;

beforeEach(async () => {
  hands = await designHands(product.browser, product.address);
});

it('compares two revisions of a design, brings the first back and offers all to a cost sheet', async () => {
  const { page, press, type, grid, tabTo, column, enterDesign, note, waitForRevision, errors } = hands;
  await enterDesign('REVISED-1');
  await tabTo(grid('Assemblies'));
  await type('Drawer');
  await press('Enter');
  await note().fill('One drawer');
  await page.getByRole('button', { name: 'Save as revision 2' }).click();
  await waitForRevision(2);

  const revisions = grid('Revisions');
  await revisions.getByRole('row', { name: /^2 .*One drawer/ }).waitFor();
  await page
    .getByRole('button', { name: / From$/ })
    .last()
    .click();
  await page.getByRole('option', { name: /Revision 1/ }).click();
  const changes = grid('From revision 1 to revision 2');
  await changes.getByRole('row', { name: /Drawer.*Assemblies.*new.*In one piece 1/ }).waitFor();
  await changes.getByRole('columnheader', { name: 'Revision 2' }).waitFor();

  await page.getByRole('button', { name: 'Read revision 1' }).click();
  await page.getByRole('button', { name: 'Bring back as revision 3' }).click();
  await page.getByText('Revision 1 is back as revision 3').waitFor();
  await revisions.getByRole('row', { name: /^3 .*Revision 1 brought back/ }).waitFor();
  expect(await column('Assemblies', 0)).toEqual([]);
  await page.getByText('Nothing differs between the drawings of revision 1 and revision 3').waitFor();

  const sheetId = await page.evaluate(async () => {
    const answer = await fetch('/api/cost-sheets?limit=50');
    const { items } = await answer.json();
    const { id } = items[0];
    const read = await fetch(`/api/cost-sheets/${id}`);
    const { title, clientId, basis, onDate, quantities, terms } = await read.json();
    const designId = location.pathname.split('/').at(-1);
    const kept = await fetch(`/api/cost-sheets/${id}`, {
      method: 'PUT',
      headers: { 'content-type': 'application/json', 'if-match': read.headers.get('etag') ?? '' },
      body: JSON.stringify({
        title,
        designId,
        clientId,
        basis,
        onDate,
        quantities,
        terms,
        revision: null,
        variant: null,
        parameterValues: {},
      }),
    });
    if (!kept.ok) throw new Error(await kept.text());
    return id;
  });
  await page.goto(`${product.address}/cost-sheets/${sheetId}`);
  await page
    .getByRole('region', { name: 'What is made' })
    .getByRole('button', { name: /Drawing/ })
    .click();
  const offered = await page.getByRole('option').allInnerTexts();
  expect(offered.map((text) => text.split('\n')[0])).toEqual([
    'Newest (3)',
    'Revision 3',
    'Revision 2',
    'Revision 1',
  ]);
  expect(errors).toEqual([]);
});
