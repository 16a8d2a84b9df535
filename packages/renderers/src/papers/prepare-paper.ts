import { type Paper, QuotingInputError, readDay } from '@scantling/quoting';
import { cleanText, isInvisible } from './clean-text.ts';
import { drawnCharacters } from './font-files.ts';
import { PaperCharacterError, PaperPictureError } from './paper-errors.ts';
import { pictureType } from './picture-type.ts';

/** The bytes of a paper's pictures (PNG, JPEG, WebP) by their SHA-256 in hex. */
export type PaperPictures = ReadonlyMap<string, Uint8Array>;

export interface PreparedPicture {
  /** Name of the file as the template asks for it. */
  readonly file: string;
  readonly bytes: Uint8Array;
  /** Where the paper names it first. */
  readonly field: string;
}

export interface PreparedPaper {
  /** The paper as the template reads it. */
  readonly json: string;
  /** Seconds since 1970 of the paper's day. */
  readonly timestamp: number;
  readonly pictures: readonly PreparedPicture[];
}

/** Read by programs and read aloud, not drawn. */
const UNDRAWN_KEYS: ReadonlySet<string> = new Set(['title', 'alternative', 'sha256']);
/** Texts whose line feeds count. */
const PARAGRAPH_KEYS: ReadonlySet<string> = new Set([
  'intro',
  'details',
  'paragraphs',
  'text',
  'note',
  'value',
]);
const LINK = /^(?:https?|mailto|tel):[^\s]+$/i;

/** @throws PaperCharacterError */
function cleaned(text: string, key: string, field: string): string {
  const clean = cleanText(text, PARAGRAPH_KEYS.has(key) ? 'kept' : 'spaced');
  if (UNDRAWN_KEYS.has(key)) return clean;
  const drawn = drawnCharacters();
  for (const character of clean)
    if (!drawn.has(character.codePointAt(0) ?? 0) && !isInvisible(character))
      throw new PaperCharacterError(field, character);
  return clean;
}

/** @throws QuotingInputError for what no reader of PDF should follow, such as a script */
function checkedLink(address: string, field: string): string {
  if (LINK.test(address) && cleanText(address, 'spaced') === address) return address;
  throw new QuotingInputError(
    field,
    'is no address that a paper can lead to',
    'Give an address that starts with https:, mailto: or tel:.',
  );
}

function textIn(value: object, name: string): string | undefined {
  const found: unknown = Reflect.get(value, name);
  return typeof found === 'string' ? found : undefined;
}

/** The file a picture of the paper is given to the template as. @throws PaperPictureError */
function pictureFile(
  picture: object,
  sha256: string,
  field: string,
  pictures: PaperPictures,
): PreparedPicture {
  const bytes = pictures.get(sha256);
  if (bytes === undefined)
    throw new PaperPictureError(field, 'names a picture that is not there', 'Choose the picture again.');
  const type = pictureType(bytes);
  if (type === null)
    throw new PaperPictureError(field, 'is no PNG, JPEG or WebP picture', 'Upload it in one of these.');
  if ((textIn(picture, 'alternative') ?? '').trim() === '')
    throw new PaperPictureError(field, 'has no alternative text', 'Say what the picture shows.');
  return { file: `${sha256.replace(/[^0-9a-z]/gi, '')}.${type}`, bytes, field };
}

/**
 * Makes a paper fit for the template: clean text that the fonts can draw, links that are links, pictures with names.
 * @throws PaperCharacterError, PaperPictureError, QuotingInputError
 */
export function preparePaper(paper: Paper, pictures: PaperPictures): PreparedPaper {
  const used = new Map<string, PreparedPicture>();

  const prepared = (value: unknown, key: string, field: string): unknown => {
    if (typeof value === 'string')
      return key === 'link' ? checkedLink(value, field) : cleaned(value, key, field);
    if (typeof value !== 'object' || value === null) return value;
    // What stands in a list is named like the list.
    if (Array.isArray(value)) return value.map((one, at) => prepared(one, key, `${field}.${at}`));
    const entries = Object.entries(value).map(([name, inner]): [string, unknown] => {
      const isTarget = key === 'link' && name === 'address';
      return [name, prepared(inner, isTarget ? 'link' : name, field === '' ? name : `${field}.${name}`)];
    });
    const rest = Object.fromEntries(entries);
    const sha256 = textIn(value, 'sha256');
    if (sha256 !== undefined) {
      const picture = pictureFile(value, sha256, field, pictures);
      if (!used.has(picture.file)) used.set(picture.file, picture);
      return { ...rest, file: picture.file };
    }
    return rest;
  };

  const timestamp = readDay('date', paper.date).getTime() / 1000;
  return { json: JSON.stringify(prepared(paper, '', '')), timestamp, pictures: [...used.values()] };
}
