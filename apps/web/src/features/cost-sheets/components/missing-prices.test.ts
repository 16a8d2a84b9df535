import { expect, it } from 'vitest';
import { missingIn, missingWords } from './missing-prices.ts';

const lacking = (code: string) => ({ code, name: code.toLowerCase() });

it('names each material without a price once, whatever numbers of pieces lack it', () => {
  const columns = [[lacking('OAK'), lacking('SCREW')], [lacking('OAK')]].map((unpriced) => ({ unpriced }));
  const missing = missingIn({ columns });
  expect(missing).toEqual(['oak', 'screw']);
  expect(missingWords(missing)).toBe('2 materials have no price: oak, screw');
  expect(missingWords(['oak'])).toBe('1 material has no price: oak');
  expect(missingWords([])).toBe('');
});
