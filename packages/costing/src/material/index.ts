export * from './material.ts';
