export * from './bought-cost.ts';
export * from './choose-offer.ts';
export { lineAt, OfferTiers } from './offer-prices.ts';
export * from './price-offer.ts';
export { type SupplierTerms, termAtCost } from './supplier-terms.ts';
