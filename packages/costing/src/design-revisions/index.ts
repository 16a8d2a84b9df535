export * from './compare-designs.ts';
