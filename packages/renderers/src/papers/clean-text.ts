// Controls of ISO 6429 and of text direction would change what stands around them; line feeds are dealt with apart.
const CONTROLS =
  /(?!\n)\p{Cc}|\p{Surrogate}|[\u061c\u200e\u200f\u2028-\u202e\u2066-\u206f\ufeff\ufff9-\ufffb]/gu;
const LINE_ENDS = /\r\n?|\u2028|\u2029|\u0085/g;

/** Drawn by no glyph of its own: joiners, breaks, variants of emoji, and the line feed. */
const INVISIBLE = /^(?:[\n\u00ad\u200b-\u200d\u2060]|\p{Variation_Selector})$/u;

export function isInvisible(character: string): boolean {
  return INVISIBLE.test(character);
}

/** Text without control characters and halves of surrogate pairs: tabs become spaces, line ends line feeds or spaces. */
export function cleanText(text: string, lineFeeds: 'kept' | 'spaced'): string {
  const clean = text.replaceAll('\t', ' ').replace(LINE_ENDS, '\n').replace(CONTROLS, '').normalize('NFC');
  return lineFeeds === 'kept' ? clean : clean.replaceAll('\n', ' ');
}
