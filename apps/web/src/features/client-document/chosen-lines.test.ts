import { exampleDocument } from '@scantling/contracts';
import { describe, expect, it } from 'vitest';
import { chosenWith, type DocumentLine, isTaken, lineBlocks, totalsWith } from './chosen-lines.ts';

const [first] = exampleDocument.lines;
if (first === undefined) throw new Error('the example has lines');
const line = (id: string, price: string, choice: DocumentLine['choice']): DocumentLine => ({
  ...first,
  id,
  choice,
  price,
  amount: price,
  quantity: '1',
  priceBase: '1',
});
const oak = line('oak', '100', { kind: 'alternate', group: 'Top', isStandard: true });
const lamp = line('lamp', '30', { kind: 'option' });
const slate = line('slate', '150', { kind: 'alternate', group: 'Top', isStandard: false });
const document = {
  ...exampleDocument,
  discount: null,
  lines: [line('base', '1000', { kind: 'included' }), oak, lamp, slate],
};

describe('lines of an offer', () => {
  it('stand in their order, a group where its first line stands', () => {
    expect(
      lineBlocks(document.lines).map((block) =>
        block.kind === 'line' ? block.line.id : block.lines.map(({ id }) => id),
      ),
    ).toEqual(['base', ['oak', 'slate'], 'lamp']);
  });

  it('are taken as the client chooses: one of a group, the standard one without a choice', () => {
    const taken = (chosen: readonly string[]) =>
      document.lines.filter((one) => isTaken(document, chosen, one)).map(({ id }) => id);
    expect(taken([])).toEqual(['base', 'oak']);
    expect(taken(['slate', 'lamp'])).toEqual(['base', 'lamp', 'slate']);
  });

  it('never name the standard line nor two of a group, which the server would refuse', () => {
    expect(chosenWith(document, ['lamp'], slate, true)).toEqual(['lamp', 'slate']);
    expect(chosenWith(document, ['lamp', 'slate'], oak, true)).toEqual(['lamp']);
    expect(chosenWith(document, ['lamp', 'slate'], lamp, false)).toEqual(['slate']);
  });

  // 1000 + 150 + 30 = 1180, and 19 % of it: 224.20; by hand.
  it('come to what is chosen, with tax', () => {
    expect(totalsWith(document, ['slate', 'lamp'])).toMatchObject({
      net: '1180',
      tax: '224.2',
      total: '1404.2',
    });
    expect(totalsWith(document, [])).toMatchObject({ net: '1100' });
  });
});
