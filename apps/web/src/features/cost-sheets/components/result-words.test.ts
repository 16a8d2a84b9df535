import { expect, it } from 'vitest';
import { movedWords, resultWords } from './result-words.ts';

const money = { unit: 'money', currency: 'USD' } as const;
const ratio = { unit: 'ratio', currency: null } as const;

it('says how far a result moved, in its unit and in per cent', () => {
  const net = { name: 'netPrice', difference: '-12.5', share: '-0.05' } as const;
  expect(movedWords(net, money, 'en')).toBe('−$12.50 (−5.0\u00a0%)');
  expect(movedWords({ ...net, difference: '12.5', share: null }, money, 'en')).toBe('+$12.50');
  expect(movedWords({ ...net, difference: '0', share: '0' }, money, 'en')).toBe('as it stands');
});

it('tells a margin in points, since a share of a share misleads', () => {
  const margin = { name: 'margin', difference: '0.0123', share: '0.05' } as const;
  expect(movedWords(margin, ratio, 'en')).toBe('+1.2 points');
  expect(resultWords('margin', '0.25', ratio, 'en')).toBe('25.0\u00a0%');
});
