import type { EnquiryOutcome, EnquirySource } from '@scantling/quoting';

export const SOURCE_WORDS: Readonly<Record<EnquirySource, string>> = {
  'word-of-mouth': 'word of mouth',
  'past-client': 'past client',
  website: 'website',
  market: 'market or fair',
  other: 'other',
};

export const OUTCOME_WORDS: Readonly<Record<EnquiryOutcome, string>> = {
  open: 'open',
  answered: 'answered',
  quoted: 'quoted',
  won: 'won',
  lost: 'lost',
};
