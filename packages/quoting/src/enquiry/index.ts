export { ENQUIRY_OUTCOMES, ENQUIRY_SOURCES, type EnquiryOutcome, type EnquirySource } from './enquiry.ts';
export { type CountedEnquiry, type EnquiryResult, enquiryResults } from './enquiry-results.ts';
