import type { DomainErrorCode } from './domain-errors.ts';

export type ProblemRow = Readonly<{
  status: number;
  title: string;
  /** What to do about it, where the error does not say it better. */
  mend: string;
}>;

/** What a domain package's errors answer; a new error class there does not compile without a row here. */
export const DOMAIN_PROBLEMS = {
  'costing-input': {
    status: 422,
    title: 'A value cannot be used',
    mend: 'Correct the field named.',
  },
  'currency-mismatch': {
    status: 422,
    title: 'Two currencies in one sum',
    mend: 'Give all amounts in one currency, or enter an exchange rate.',
  },
  'currency-needed': {
    status: 422,
    title: 'An amount without a currency',
    mend: 'Name the currency of the amount.',
  },
  'figure-table': {
    status: 422,
    title: 'A table of figures cannot be worked out',
    mend: 'Send the table as an answer with working=true gave it, with every figure it names.',
  },
  'cutting-busy': {
    status: 503,
    title: 'Too many cutting plans are being made',
    mend: 'Try again in a minute.',
  },
  'cutting-cancelled': {
    status: 409,
    title: 'The cutting plan was called off',
    mend: 'Ask for it again.',
  },
  'cutting-failed': {
    status: 500,
    title: 'The cutting plan could not be made',
    mend: 'Try again; where it fails again, tell who runs the program: the log says why.',
  },
  'cutting-impossible': {
    status: 422,
    title: 'The parts cannot be cut from this stock',
    mend: 'Use larger stock, or allow more pieces of it.',
  },
  'cutting-input': {
    status: 422,
    title: 'A value of the cutting cannot be used',
    mend: 'Correct the field named.',
  },
  'cutting-plan-refused': {
    status: 500,
    title: 'The cutting plan did not pass its check',
    mend: 'Try again; where it fails again, tell who runs the program: the log says why.',
  },
  'leaf-clash': {
    status: 422,
    title: 'Two values under one name',
    mend: 'Give each record a code of its own.',
  },
  'measure-input': {
    status: 422,
    title: 'A measure cannot be used',
    mend: 'Correct the field named.',
  },
  'money-input': {
    status: 422,
    title: 'An amount cannot be used',
    mend: 'Correct the field named.',
  },
  'no-exchange-rate': {
    status: 422,
    title: 'There is no exchange rate for that date',
    mend: 'Enter the exchange rate first.',
  },
  'no-answer': {
    status: 422,
    title: 'No answer',
    mend: 'Correct the values that leave nothing to divide by.',
  },
  'not-a-decimal': { status: 422, title: 'Not a number', mend: 'Write it with digits and a point.' },
  'paper-character': {
    status: 422,
    title: 'A character cannot be printed',
    mend: 'Write it with letters, digits and signs of European scripts.',
  },
  'paper-not-made': {
    status: 500,
    title: 'The paper could not be made',
    mend: 'Try again; where it fails again, tell who runs the program: the log says why.',
  },
  'paper-picture': {
    status: 422,
    title: 'A picture cannot be printed',
    mend: 'Upload the picture again as PNG or JPEG.',
  },
  'paper-too-slow': {
    status: 503,
    title: 'The paper took too long to make',
    mend: 'Try again; where it fails again, use fewer lines and smaller pictures.',
  },
  'papers-busy': { status: 503, title: 'Too many papers are being made', mend: 'Try again in a minute.' },
  'path-parameter-missing': { status: 500, title: 'Something went wrong here', mend: 'Try again later.' },
  'quote-state': {
    status: 409,
    title: 'The quote is not at that step',
    mend: 'Read the quote and do what its state allows.',
  },
  'quoting-input': {
    status: 422,
    title: 'A value of the quote cannot be used',
    mend: 'Correct the field named.',
  },
  'table-unreadable': {
    status: 422,
    title: 'The file cannot be read as a table',
    mend: 'Send a CSV or XLSX file with one header row.',
  },
  'risk-input': {
    status: 422,
    title: 'An estimate cannot be used',
    mend: 'Correct the value named.',
  },
  'too-much-work': {
    status: 422,
    title: 'The question is too large',
    mend: 'Ask about fewer figures, leaves or samples at once.',
  },
  'units-do-not-convert': {
    status: 422,
    title: 'One unit cannot be turned into the other',
    mend: 'Give the size, weight or content that ties the two together, or use another unit.',
  },
  'unknown-pricing-unit': {
    status: 422,
    title: 'There is no such pricing unit',
    mend: 'Use one of the units the API description lists.',
  },
  'unreadable-length': {
    status: 422,
    title: 'A length cannot be read',
    mend: 'Write it like 600 mm, 23 5/8" or 1\' 11 5/8".',
  },
  'unknown-figure': {
    status: 422,
    title: 'There is no such figure',
    mend: 'Name a leaf that stands in the answer with working=true.',
  },
} as const satisfies Record<DomainErrorCode, ProblemRow>;
