import { describe, expect, it } from 'vitest';
import { recordAddress } from './record-address.ts';

describe('the screen of a source', () => {
  const byCode = new Map([['tool:planer', '/tools/7']]);
  it.each([
    ['tool:planer', { to: '/tools/7' }],
    ['tool:gone', undefined],
    ['overhead:workshop', { to: '/workshop' }],
    ['overhead:0193', { to: '/overhead/0193' }],
    ['overhead:lost-enquiries', { to: '/enquiries' }],
    ['enquiry:0195', { to: '/enquiries/0195' }],
    ['enquiries:all', { to: '/enquiries' }],
    ['cost-sheet:0196', { to: '/cost-sheets/0196' }],
    ['proof:workshop', { to: '/overhead' }],
    ['workshop:settings', { to: '/workshop' }],
    ['person:0194', { to: '/people/0194' }],
    ['exchange-rate:USD-EUR', { to: '/exchange-rates' }],
    ['price-line:12/42', { list: '12', line: '42' }],
    ['price-line:42', undefined],
  ])('%s is %j', (record, address) => {
    expect(recordAddress(record, byCode)).toEqual(address);
  });
});
