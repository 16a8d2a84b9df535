export * from './paper-errors.ts';
export * from './paper-renderer.ts';
export type { PaperPictures } from './prepare-paper.ts';
