export * from './apply-changes.ts';
export * from './leaf-home.ts';
export * from './own-value.ts';
export * from './preview-changes.ts';
export * from './sheet-changes.ts';
export * from './take-back-own-value.ts';
