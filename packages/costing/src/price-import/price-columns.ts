/**
 * The columns a price file can have. Headers of our own files carry these names; a supplier's are mapped to them.
 * Needed: code, price, and unit unless all rows share one.
 */
export const PRICE_COLUMNS = [
  'code',
  'description',
  'material',
  'unit',
  'price',
  'from',
  'break kind',
  'pack',
  'minimum',
  'lead days',
] as const;
export type PriceColumn = (typeof PRICE_COLUMNS)[number];

/** What suppliers call them (common practice, no source); compared without case, dots, dashes and spaces. */
export const HEADER_WORDS: Readonly<Record<PriceColumn, readonly string[]>> = {
  code: [
    'code',
    'sku',
    'item',
    'item no',
    'item number',
    'item code',
    'article',
    'artikel',
    'artikel nr',
    'article no',
    'article number',
    'part no',
    'part number',
    'product code',
    'stock code',
    'ref',
    'reference',
    'artikelnummer',
    'artikelnr',
    'art nr',
  ],
  description: [
    'description',
    'name',
    'product',
    'title',
    'text',
    'item description',
    'product name',
    'bezeichnung',
    'beschreibung',
    'designation',
  ],
  material: ['material', 'material code', 'our code', 'our material'],
  unit: [
    'unit',
    'uom',
    'unit of measure',
    'per',
    'price unit',
    'pricing unit',
    'sold by',
    'einheit',
    'unite',
  ],
  price: [
    'price',
    'unit price',
    'net price',
    'list price',
    'price each',
    'cost',
    'rate',
    'amount',
    'preis',
    'einzelpreis',
    'prix',
    'net',
  ],
  from: [
    'from',
    'from quantity',
    'quantity from',
    'break',
    'break quantity',
    'price break',
    'qty from',
    'qty break',
    'ab menge',
    'ab',
  ],
  'break kind': ['break kind', 'kind of break'],
  pack: ['pack', 'pack size', 'pack qty', 'pack quantity', 'multiple', 'multiples of', 'packed in', 'vpe'],
  minimum: [
    'minimum',
    'min',
    'min qty',
    'minimum quantity',
    'minimum order',
    'min order',
    'moq',
    'mindestmenge',
  ],
  'lead days': ['lead days', 'lead time', 'lead time days', 'delivery days', 'days', 'lieferzeit'],
};

/** A header as compared: small letters and digits only. */
export function bareHeader(text: string): string {
  return text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}
