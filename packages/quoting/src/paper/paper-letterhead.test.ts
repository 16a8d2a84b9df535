import { describe, expect, it } from 'vitest';
import { paperAddressee } from './paper-addressee.ts';
import { type PaperSender, paperLetterhead } from './paper-letterhead.ts';
import { paperPayment, paperSchedule } from './paper-payments.ts';
import { paperWriters } from './paper-style.ts';

const sender: PaperSender = {
  name: 'Hollin & Fell',
  addressLines: ['14 Sawpit Lane', '', 'Northcombe'],
  email: 'bench@hollinfell.example',
  phone: '+44 (0)20 7946 0142',
  web: 'hollinfell.example/',
  taxNumber: '12-34',
  registration: '',
  bankLines: [],
  footer: '',
  logo: null,
};

describe('the letterhead', () => {
  it('leads to mail, telephone and web', () => {
    // The number is from the range Ofcom keeps for fiction; RFC 3966 writes it without the (0) and without spaces.
    expect(paperLetterhead(sender).contact.map(({ text, link }) => [text, link])).toEqual([
      ['+44 (0)20 7946 0142', 'tel:+442079460142'],
      ['bench@hollinfell.example', 'mailto:bench@hollinfell.example'],
      ['hollinfell.example', 'https://hollinfell.example/'],
    ]);
  });

  it('leaves out what is not given', () => {
    const { footer, footerNote, address } = paperLetterhead(sender);
    expect(footer.map(({ heading }) => heading)).toEqual(['Workshop', 'Registration']);
    expect(footer[0]?.lines).toEqual(['Hollin & Fell', '14 Sawpit Lane', 'Northcombe']);
    expect([footerNote, address]).toEqual([null, ['14 Sawpit Lane', 'Northcombe']]);
    expect(paperLetterhead({ ...sender, phone: '', web: ' ', email: '' }).contact).toEqual([]);
  });
});

describe('the addressee', () => {
  it('has no more lines than the window, and loses none of its parts', () => {
    const addressLines = ['c/o Rowan', '', 'Yard 3', '7 Meridian Row', 'Eastcombe', 'ZZ 04321', 'Zedland'];
    const lines = paperAddressee({ name: 'Library Trust', addressLines });
    expect(lines).toHaveLength(6);
    expect(lines.at(-1)).toBe('ZZ 04321, Zedland');
    expect(paperAddressee({ name: 'Odile Hartwright', addressLines: [] })).toEqual(['Odile Hartwright']);
  });
});

describe('payments', () => {
  const writers = paperWriters({ locale: 'en-GB', currency: 'GBP', lengths: 'metric' });

  it('are scheduled with their shares', () => {
    const parts = [
      { label: 'Deposit', share: '0.4', due: 'on acceptance', amount: '400' },
      { label: 'Delivery', share: null, due: 'on delivery', amount: '600' },
    ];
    const rows = paperSchedule(parts, writers)?.rows ?? [];
    expect(rows.map(({ part, amount }) => [part.replaceAll('\u00a0', ' '), amount])).toEqual([
      ['Deposit, 40 %', '£400.00'],
      ['Delivery', '£600.00'],
    ]);
    expect(paperSchedule([], writers)).toBeNull();
  });

  it('say how much, when, where and under which reference', () => {
    const asked = { amount: '400', dueOn: '2026-12-09', reference: 'INV-2026-0001', note: null };
    const facts = paperPayment({ ...asked, bankLines: ['Example Bank', '', 'ZZ00'] }, writers).facts;
    expect(facts.map(({ value }) => value.replaceAll('\u00a0', ' '))).toEqual([
      '£400.00',
      '9 December 2026',
      'INV-2026-0001',
      'Example Bank\nZZ00',
    ]);
    expect(paperPayment({ ...asked, dueOn: null, bankLines: [] }, writers).facts[1]?.value).toBe(
      'on receipt',
    );
  });
});
