export const STORED_QUOTE_STATES = [
  'draft',
  'sent',
  'accepted',
  'declined',
  'superseded',
  'withdrawn',
] as const;
/** What is kept of a revision's state; that it has expired is judged when it is read. */
export type StoredQuoteState = (typeof STORED_QUOTE_STATES)[number];

export const QUOTE_STATES = [...STORED_QUOTE_STATES, 'expired'] as const;
export type QuoteState = (typeof QUOTE_STATES)[number];

export const QUOTE_ACTS = [
  'edit',
  'remove',
  'send',
  'renew-link',
  'accept',
  'decline',
  'withdraw',
  'revise',
  'supersede',
  'add',
  'compare',
] as const;
/** What can be done with a revision; `supersede` is what sending a newer one does to it, `compare` looks only. */
export type QuoteAct = (typeof QUOTE_ACTS)[number];

/** The state after each act that a state allows. */
const TRANSITIONS: Readonly<Record<QuoteState, Readonly<Partial<Record<QuoteAct, StoredQuoteState>>>>> = {
  draft: { edit: 'draft', remove: 'draft', send: 'sent' },
  sent: {
    compare: 'sent',
    'renew-link': 'sent',
    accept: 'accepted',
    decline: 'declined',
    withdraw: 'withdrawn',
    revise: 'sent',
    supersede: 'superseded',
  },
  expired: {
    compare: 'sent',
    decline: 'declined',
    withdraw: 'withdrawn',
    revise: 'sent',
    supersede: 'superseded',
  },
  accepted: { compare: 'accepted', add: 'accepted' },
  declined: { compare: 'declined', revise: 'declined', supersede: 'superseded' },
  withdrawn: { compare: 'withdrawn', revise: 'withdrawn', supersede: 'superseded' },
  superseded: { compare: 'superseded' },
};

const MENDS: Readonly<Record<QuoteState, string>> = {
  draft: 'send it first',
  sent: 'make a revision: sending it replaces this one',
  expired: 'make a revision and send it, with a validity of its own',
  accepted: 'make an addition: what was accepted stays as it is',
  declined: 'make a revision and send it',
  withdrawn: 'make a revision and send it',
  superseded: 'go on with the newest revision',
};

const ACT_WORDS: Readonly<Record<QuoteAct, string>> = {
  edit: 'be changed',
  remove: 'be removed',
  send: 'be sent',
  'renew-link': 'get a new link',
  accept: 'be accepted',
  decline: 'be declined',
  withdraw: 'be withdrawn',
  revise: 'be revised',
  supersede: 'be replaced',
  add: 'get an addition',
  compare: 'be compared with today',
};

/** Thrown when the state of a quote does not allow what was asked: says the state and what to do instead. */
export class QuoteStateError extends Error {
  readonly code = 'quote-state';
  readonly field = 'state';
  readonly reason: string;
  readonly mend: string;
  constructor(
    readonly state: QuoteState,
    readonly act: QuoteAct,
  ) {
    const reason = `is ${state}: it cannot ${ACT_WORDS[act]}`;
    super(`The quote ${reason}; ${MENDS[state]}.`);
    this.name = 'QuoteStateError';
    this.reason = reason;
    this.mend = MENDS[state];
  }
}

/**
 * The state on a day: a sent revision has expired once the last day of its validity is over.
 * @param validUntil the last day it holds, YYYY-MM-DD; null before it is sent
 */
export function quoteStateOn(stored: StoredQuoteState, validUntil: string | null, today: string): QuoteState {
  return stored === 'sent' && validUntil !== null && today > validUntil ? 'expired' : stored;
}

export function allows(state: QuoteState, act: QuoteAct): boolean {
  return TRANSITIONS[state][act] !== undefined;
}

/** The state after the act. @throws QuoteStateError where the state does not allow it */
export function stateAfter(state: QuoteState, act: QuoteAct): StoredQuoteState {
  const next = TRANSITIONS[state][act];
  if (next === undefined) throw new QuoteStateError(state, act);
  return next;
}
