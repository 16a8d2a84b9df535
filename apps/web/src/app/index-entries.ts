/** The groups of the index strip, in its order, with the word each stands under; the bench stands by itself. */
export const ENTRY_GROUPS = {
  work: 'Work',
  selling: 'Selling',
  prices: 'Prices',
  rates: 'Rates',
  workshop: 'Workshop',
} as const;

export type EntryGroup = keyof typeof ENTRY_GROUPS | 'bench';

export interface IndexEntry {
  readonly label: string;
  /** Address of the screen; `isServed` marks pages the API serves, outside of this router. */
  readonly to: string;
  readonly isServed?: boolean;
  readonly group: EntryGroup;
  /** What the screen is for, in one line; shown on the bench. */
  readonly purpose: string;
}

/** The screens on the index strip, in its order. A screen is put there by one line. */
export const INDEX_ENTRIES: readonly IndexEntry[] = [
  { label: 'Bench', to: '/', group: 'bench', purpose: 'Where to begin, and where to go on' },
  {
    label: 'Designs',
    to: '/designs',
    group: 'work',
    purpose: 'Pieces as drawn, with their bills of materials',
  },
  {
    label: 'Cost sheets',
    to: '/cost-sheets',
    group: 'work',
    purpose: 'What a piece costs and what to charge',
  },
  {
    label: 'Enquiries',
    to: '/enquiries',
    group: 'selling',
    purpose: 'Who asked for what, early prices, what came of it',
  },
  {
    label: 'Quotes',
    to: '/quotes',
    group: 'selling',
    purpose: 'What was offered to whom, what became of it, what has moved since',
  },
  {
    label: 'Invoices',
    to: '/invoices',
    group: 'selling',
    purpose: 'What was billed, what came in, what is owed and overdue',
  },
  { label: 'Clients', to: '/clients', group: 'selling', purpose: 'Whom pieces are made for' },
  {
    label: 'Mail',
    to: '/mail',
    group: 'selling',
    purpose: 'What was written to people, and what became of it',
  },
  {
    label: 'Price lists',
    to: '/price-lists',
    group: 'prices',
    purpose: 'Dated lists by supplier, import and preview',
  },
  {
    label: 'Materials',
    to: '/materials',
    group: 'prices',
    purpose: 'What can be bought, its prices then and now',
  },
  { label: 'Suppliers', to: '/suppliers', group: 'prices', purpose: 'Who sells, on which terms' },
  {
    label: 'Exchange rates',
    to: '/exchange-rates',
    group: 'prices',
    purpose: 'Dated rates for prices in another currency',
  },
  {
    label: 'Tools',
    to: '/tools',
    group: 'rates',
    purpose: 'Machines and hand tools, what an hour costs, the register',
  },
  {
    label: 'Labour grades',
    to: '/labour-grades',
    group: 'rates',
    purpose: 'Pay, burden and what an hour of each grade costs',
  },
  {
    label: 'Overhead',
    to: '/overhead',
    group: 'rates',
    purpose: 'Yearly costs of being open, each with its one home',
  },
  {
    label: 'Workshop',
    to: '/workshop',
    group: 'workshop',
    purpose: 'Currency, allowances, kerfs, what overhead is recovered over',
  },
  { label: 'People', to: '/people', group: 'workshop', purpose: 'Who works in the shop, with paid hours' },
  { label: 'Users', to: '/users', group: 'workshop', purpose: 'Who can sign in, and as what' },
  { label: 'API tokens', to: '/api-tokens', group: 'workshop', purpose: 'Keys for programs of your own' },
  {
    label: 'API',
    to: '/api/docs',
    isServed: true,
    group: 'workshop',
    purpose: 'Every route with an example, for programs of your own',
  },
];
