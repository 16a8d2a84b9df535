import { decimal } from '@scantling/decimals';
import type { FigureNode } from '@scantling/figures';
import { describe, expect, it } from 'vitest';
import { riskIn } from './risk-search.ts';
import { contingencyShare, leftFigures, riskWords, runsWords } from './risk-words.ts';

describe('shares of runs', () => {
  it('are counted as people count them', () => {
    const words = ['0.8', '0.1', '0.5', '0.95', '0.031', '0.0042', '0.0004', '0', '1'].map((share) =>
      runsWords(share, 'en-US'),
    );
    expect(words).toEqual([
      '8 in 10 runs',
      '1 in 10 runs',
      '5 in 10 runs',
      '95 in 100 runs',
      '3 in 100 runs',
      '4 in 1,000 runs',
      'fewer than 1 in 1,000 runs',
      'none of the runs',
      'all of the runs',
    ]);
  });

  it('never round a rare loss away, nor a sure one up', () => {
    expect(runsWords('0.9999', 'en-US')).toMatch(/^100\.0\s%|^99/);
    expect(runsWords('0.00001', 'en-US')).not.toBe('none of the runs');
  });
});

describe('the answer in words', () => {
  const sentence = {
    what: 'Hall bench',
    isOne: true,
    percentile: '0.8',
    cost: '$2,150.00',
    price: '$2,690.00',
    locale: 'en-US',
  };

  it('says what is covered, and how often the price makes a loss', () => {
    expect(riskWords({ ...sentence, ofLoss: '0.03' })).toBe(
      'In 8 of 10 runs “Hall bench” costs $2,150.00 or less. At a price of $2,690.00, 3 in 100 runs would make a loss.',
    );
    expect(riskWords({ ...sentence, ofLoss: '0' })).toMatch(/none of the runs makes a loss\.$/);
    expect(riskWords({ ...sentence, ofLoss: null })).toMatch(/or less\.$/);
  });
});

it('adds what is missing to the percentile, as the share of the cost that the terms take', () => {
  expect(contingencyShare('2200', decimal('2000'))?.toString()).toBe('0.1');
  expect(contingencyShare('2000', decimal('2000'))).toBeNull();
  expect(contingencyShare('1900', decimal('2000'))).toBeNull();
});

it('says what a price leaves, with its working', () => {
  const node = (id: string, value: string): FigureNode => ({
    id,
    label: id,
    unit: 'money',
    currency: 'USD',
    value,
  });
  const { left, margin } = leftFigures('p80', node('price', '2500'), node('cost', '2000'));
  expect([left.value, left.how?.inputs, margin?.value, margin?.how?.inputs]).toEqual([
    '500',
    ['price', 'cost'],
    '0.2',
    ['left/p80', 'price'],
  ]);
  expect(leftFigures('p80', node('price', '0'), node('cost', '2000')).margin).toBeNull();
});

it('reads an address, and leaves out what is no estimate', () => {
  const estimate = { id: 'terms/freight', low: '50', likely: '60', high: '90' };
  expect(riskIn({ seed: 7, estimates: [estimate] })).toEqual({ seed: '7', estimates: [estimate] });
  expect(riskIn({ seed: '', estimates: 'many' })).toEqual({});
});
