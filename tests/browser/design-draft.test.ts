import { beforeEach, describe, expect, it } from 'vitest';
import { type DesignHands, designHands } from './design-hands.ts';
import { runningProduct } from './running-product.ts';

const product = runningProduct();
let hands: DesignHands;

beforeEach(async () => {
  hands = await designHands(product.browser, product.address);
});

describe('changes that are not saved', () => {
  it('are asked for before leaving and come back after a reload', async () => {
    const { page, press, type, grid, tabTo, column, enterDesign, note } = hands;
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
    const { page, press, type, grid, tabTo, column, enterDesign, waitForRevision } = hands;
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
    await waitForRevision(3);
    expect(await column('Assemblies', 0)).toEqual(['Drawer']);
  });
});
