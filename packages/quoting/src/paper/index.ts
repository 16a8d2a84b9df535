export * from './paper.ts';
export * from './paper-addressee.ts';
export * from './paper-letterhead.ts';
export * from './paper-line-table.ts';
export * from './paper-payments.ts';
export * from './paper-style.ts';
export * from './paper-totals.ts';
export * from './read-day.ts';
