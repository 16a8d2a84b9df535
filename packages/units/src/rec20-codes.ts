/**
 * Codes of UN/ECE Recommendation 20 (revision 11e) for the units that documents of the trade name. The published list
 * has the description of the cord under BFT; the name, board foot, is what counts. It has no SFT.
 */
export const REC20_CODES = {
  one: 'C62',
  each: 'EA',
  piece: 'H87',
  metre: 'MTR',
  millimetre: 'MMT',
  foot: 'FOT',
  inch: 'INH',
  'square foot': 'FTK',
  'square metre': 'MTK',
  'cubic metre': 'MTQ',
  'board foot': 'BFT',
  'thousand board foot': 'MBF',
  'linear foot': 'LF',
  'linear metre': 'LM',
  hour: 'HUR',
  pound: 'LBR',
  kilogram: 'KGM',
  'gallon (US)': 'GLL',
  litre: 'LTR',
  pair: 'PR',
  set: 'SET',
} as const;

export type Rec20Name = keyof typeof REC20_CODES;

export function isRec20Name(name: string): name is Rec20Name {
  return Object.hasOwn(REC20_CODES, name);
}
