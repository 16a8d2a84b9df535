import { getPriceImport } from '@scantling/contracts';
import { describe, expect, it } from 'vitest';
import { shareRead, standOf } from './import-words.ts';

const read = getPriceImport.answer.parse(getPriceImport.example.answer);

describe('how an import stands', () => {
  it('is said with the share of the file while it is read', () => {
    const reading = {
      ...read,
      status: 'reading',
      phase: 'reading',
      bytesRead: 333,
      bytesTotal: 1000,
    } as const;
    expect(shareRead(reading)).toBe(33);
    expect(standOf(reading)).toBe('Reading the file: 33 %');
    expect(shareRead({ ...reading, bytesTotal: 0 })).toBeUndefined();
  });

  it('names what is done otherwise, or what is to be done', () => {
    expect(standOf({ ...read, status: 'reading', phase: 'comparing' })).toBe(
      'Comparing with the prices in force',
    );
    expect(standOf(read)).toBe('To be looked at and taken over');
  });
});
