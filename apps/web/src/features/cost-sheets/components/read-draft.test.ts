import { costSheetSchema, exampleCostSheet, exampleTerms } from '@scantling/contracts';
import type { PricePolicy } from '@scantling/costing';
import { describe, expect, it } from 'vitest';
import { readDraft } from './read-draft.ts';
import { draftOf, newDraft } from './sheet-draft.ts';

const STARTING = { policy: 'margin', share: '0', contingency: '0' } as const;

const { title, designId, clientId, basis, onDate, quantities } = costSheetSchema.parse(exampleCostSheet);
const sheet = {
  title,
  designId,
  clientId,
  basis,
  onDate,
  quantities,
  terms: { ...exampleTerms, overheadAt: 'planned' as const },
};

describe('a cost sheet in its form', () => {
  const policies: PricePolicy[] = [
    { kind: 'markup', markup: '0.425' },
    { kind: 'markup-by-class', materials: '0.2', labour: '0.5', machines: '0.1', other: '0' },
    { kind: 'margin', margin: '0.3' },
    { kind: 'hourly-earnings', perHour: '52.5' },
    { kind: 'entered', price: '1890', per: 'batch' },
    { kind: 'entered', price: '1890', per: 'piece' },
  ];
  it.each(policies)('reads back as it was saved: $kind', (policy) => {
    const saved = {
      ...sheet,
      terms: { ...sheet.terms, promisedDate: '2026-09-01', overheadAt: 'actual' as const, policy },
    };
    expect(readDraft(draftOf(saved))).toEqual({ body: saved, errors: [] });
  });

  it('shows shares as percentages and quantities as a list', () => {
    const draft = draftOf(sheet);
    expect(draft.margin).toBe('30');
    expect(draft.contingency).toBe('5');
    expect(draft.quantities).toBe('1, 2, 5');
  });

  it("takes today's prices without a date and no rounding without a step", () => {
    const { body } = readDraft({ ...draftOf(sheet), onDate: '', stepTo: ' ' });
    expect(body?.onDate).toBeNull();
    expect(body?.terms).not.toHaveProperty('priceStep');
  });

  it('names every field that cannot be read, as the API would', () => {
    const { errors } = readDraft({
      ...draftOf(sheet),
      quantities: '1, two',
      freight: '1,250',
      discount: 'a lot',
      margin: '',
    });
    expect(errors.map(({ field }) => field)).toEqual([
      'quantities',
      'terms.freight',
      'terms.discount',
      'terms.policy.margin',
    ]);
    for (const { mend } of errors) expect(mend).not.toBe('');
  });

  it('starts a new sheet with the workshop’s margin or markup and contingency', () => {
    const terms = { policy: 'markup', share: '0.45', contingency: '0.05' } as const;
    const draft = { ...newDraft('0193f6a0-7c11-7000-8000-000000000010', terms), title: 'Stool' };
    expect([draft.policy, draft.markup, draft.margin, draft.contingency]).toEqual(['markup', '45', '', '5']);
    expect(readDraft(draft).body?.terms).toMatchObject({
      contingency: '0.05',
      policy: { kind: 'markup', markup: '0.45' },
    });
  });

  it('asks a new sheet for a title and a design', () => {
    expect(readDraft(newDraft(null, STARTING)).errors.map(({ field }) => field)).toEqual([
      'title',
      'designId',
    ]);
  });
});
