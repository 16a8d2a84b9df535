export * from './cutting-instance.ts';
