/** Where an enquiry came from. */
export const ENQUIRY_SOURCES = ['word-of-mouth', 'past-client', 'website', 'market', 'other'] as const;
export type EnquirySource = (typeof ENQUIRY_SOURCES)[number];

/** What came of it: open and answered are still undecided, quoted has an offer out. */
export const ENQUIRY_OUTCOMES = ['open', 'answered', 'quoted', 'won', 'lost'] as const;
export type EnquiryOutcome = (typeof ENQUIRY_OUTCOMES)[number];
