export * from './exact-length.ts';
export * from './format-length.ts';
export * from './parse-length.ts';
export * from './unreadable-length-error.ts';
