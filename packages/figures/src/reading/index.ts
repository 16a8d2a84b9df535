export * from './running-derivation.ts';
