import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type CountedEnquiry, ENQUIRY_SOURCES, enquiryResults } from './index.ts';

it('tells what came of enquiries by source, and what they take in hours', () => {
  const { sources, all } = enquiryResults([
    { source: 'website', outcome: 'won', hours: '4.5' },
    { source: 'website', outcome: 'lost', hours: '1' },
    { source: 'website', outcome: 'lost', hours: '2.5' },
    { source: 'website', outcome: 'undecided', hours: '9' },
    { source: 'market', outcome: 'undecided', hours: '1' },
  ]);
  expect(sources.map(({ source }) => source)).toEqual(['website', 'market']);
  const website = sources[0]?.result;
  expect(website?.received.value.toNumber()).toBe(4);
  expect(website?.winRate?.value.toDecimalPlaces(4).toString()).toBe('0.3333');
  expect(website?.hoursPerWon?.value.toString()).toBe('4.5');
  expect(website?.hoursPerLost?.value.toString()).toBe('1.75');
  expect([sources[1]?.result.winRate, sources[1]?.result.hoursPerLost]).toEqual([null, null]);
  expect(all.received.value.toNumber()).toBe(5);
});

it('counts each enquiry once', () => {
  const enquiry: fc.Arbitrary<CountedEnquiry> = fc.record({
    source: fc.constantFrom(...ENQUIRY_SOURCES),
    outcome: fc.constantFrom('won', 'lost', 'undecided'),
    hours: fc.integer({ min: 0, max: 40 }),
  });
  fc.assert(
    fc.property(fc.array(enquiry, { maxLength: 40 }), (enquiries) => {
      const { sources, all } = enquiryResults(enquiries);
      const received = sources.reduce((total, { result }) => total + result.received.value.toNumber(), 0);
      expect([received, all.received.value.toNumber()]).toEqual([enquiries.length, enquiries.length]);
    }),
  );
});
