export * from './risk-question.ts';
export * from './simulate.ts';
export * from './spread.ts';
export type { Histogram, Statistics } from './statistics.ts';
