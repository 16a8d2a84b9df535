export * from './bought-cost.ts';
export * from './choose-offer.ts';
export * from './price-offer.ts';
