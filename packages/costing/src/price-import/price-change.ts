/**
 * What importing a row does to the price of the same code, unit and break there is. changed: other terms than until
 * now, so that amounts alone do not compare. gone: a complete list does not name it any more.
 */
export const PRICE_CHANGES = [
  'new',
  'dearer',
  'cheaper',
  'changed',
  'unchanged',
  'gone',
  'unreadable',
] as const;
export type PriceChange = (typeof PRICE_CHANGES)[number];
