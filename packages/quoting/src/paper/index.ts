export * from './paper.ts';
export * from './paper-style.ts';
