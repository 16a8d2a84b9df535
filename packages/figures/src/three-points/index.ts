export * from './find-three-points.ts';
