import type { QuoteState } from '../api/list-quotes.ts';

/** The states in the order in which a quote goes through them, as a maker says them. */
export const STATE_WORDS: Readonly<Record<QuoteState, string>> = {
  draft: 'Draft',
  sent: 'Sent, open',
  accepted: 'Accepted',
  declined: 'Declined',
  expired: 'Expired',
  withdrawn: 'Withdrawn',
  superseded: 'Replaced',
};

export const QUOTE_STATES = Object.keys(STATE_WORDS) as readonly QuoteState[];

export function isQuoteState(text: unknown): text is QuoteState {
  return typeof text === 'string' && text in STATE_WORDS;
}

/** "2026-03-01 09:30" of a moment, in the reader's own time. */
export function momentWords(moment: string): string {
  const at = new Date(moment);
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())} ${two(at.getHours())}:${two(at.getMinutes())}`;
}
