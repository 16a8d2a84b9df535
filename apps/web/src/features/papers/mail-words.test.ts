import { exampleMail, exampleMailSummary } from '@scantling/contracts';
import { expect, it } from 'vitest';
import { isMailState, mailboxWords, mailtoAddress, sizeWords, stateWords } from './mail-words.ts';

it('a state says what is to be known beside it', () => {
  expect(stateWords(exampleMailSummary)).toBe('Sent');
  expect(stateWords({ ...exampleMailSummary, state: 'waiting', attempts: 2 })).toBe('Put off, tried again');
  expect(stateWords({ ...exampleMailSummary, state: 'waiting', isDemo: true })).toBe('Demo, never sent');
  expect([isMailState('failed'), isMailState('lost')]).toEqual([true, false]);
});

it('sizes are written as file lists write them', () => {
  expect([1_250, 48_213, 2_400_000].map(sizeWords)).toEqual(['1.3 kB', '48 kB', '2.4 MB']);
});

it('a mailbox without a name is its address', () => {
  expect(mailboxWords({ name: '', address: 'a@b.example' })).toBe('a@b.example');
  expect(mailboxWords({ name: 'A', address: 'a@b.example' })).toBe('A <a@b.example>');
});

it('another mail program gets subject and text, whatever they hold', () => {
  // RFC 6068, section 5: line breaks as %0D%0A, and & and ? encoded.
  const address = mailtoAddress({ ...exampleMail, subject: 'Bench & shelf?', text: 'One\nTwo' });
  expect(address).toBe('mailto:greta%40client.example?subject=Bench%20%26%20shelf%3F&body=One%0D%0ATwo');
});
