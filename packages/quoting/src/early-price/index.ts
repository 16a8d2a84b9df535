export * from './early-price.ts';
export * from './early-price-input.ts';
export { scaledBy } from './scale-factor.ts';
export type { ScaledPiece } from './scaled-piece.ts';
